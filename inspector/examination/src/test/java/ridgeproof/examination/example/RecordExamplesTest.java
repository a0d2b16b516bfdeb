package ridgeproof.examination.example;

import ridgeproof.examination.RuleExamples;

class RecordExamplesTest extends ExamplesTest {

  RecordExamplesTest() {
    super(RuleExamples.list());
  }
}
