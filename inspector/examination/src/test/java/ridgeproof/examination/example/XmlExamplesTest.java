package ridgeproof.examination.example;

class XmlExamplesTest extends ExamplesTest {

  XmlExamplesTest() {
    super(XmlExamples.list());
  }
}
