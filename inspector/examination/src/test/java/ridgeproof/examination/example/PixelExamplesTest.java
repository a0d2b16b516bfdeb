package ridgeproof.examination.example;

class PixelExamplesTest extends ExamplesTest {

  PixelExamplesTest() {
    super(PixelExamples.list());
  }
}
