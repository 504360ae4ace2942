#include "book/state.h"

namespace groundcount::book {

const char* word(TestState state)
{
    switch (state) {
    case TestState::Open: return "open";
    case TestState::Waiting: return "waiting";
    case TestState::Pass: return "pass";
    case TestState::Fail: return "fail";
    case TestState::InformationOnly: return "information only";
    case TestState::Void: return "void";
    }
    return "";
}

const char* word(TestPurpose purpose)
{
    switch (purpose) {
    case TestPurpose::Random: return "random";
    case TestPurpose::Directed: return "directed";
    case TestPurpose::Retest: return "retest";
    }
    return "";
}

}  // namespace groundcount::book
