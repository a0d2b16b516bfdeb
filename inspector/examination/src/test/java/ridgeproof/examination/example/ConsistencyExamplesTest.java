package ridgeproof.examination.example;

class ConsistencyExamplesTest extends ExamplesTest {

  ConsistencyExamplesTest() {
    super(ConsistencyExamples.list());
  }
}
