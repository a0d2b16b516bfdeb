package ridgeproof.examination.example;

class TransportExamplesTest extends ExamplesTest {

  TransportExamplesTest() {
    super(TransportExamples.list());
  }
}
