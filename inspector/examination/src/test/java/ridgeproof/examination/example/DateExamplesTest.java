package ridgeproof.examination.example;

class DateExamplesTest extends ExamplesTest {

  DateExamplesTest() {
    super(DateExamples.list());
  }
}
