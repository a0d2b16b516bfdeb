package ridgeproof.examination.example;

class DescriptiveExamplesTest extends ExamplesTest {

  DescriptiveExamplesTest() {
    super(DescriptiveExamples.list());
  }
}
