#include "command/verb.h"
#include "method/core_version.h"

int main(int argc, char** argv)
{
    using namespace groundcount;
    CLI::App app("Works on field books of Groundcount: records of earthwork density tests, sealed as they were made.", "groundbook");
    app.set_version_flag("--version", std::string("groundbook ") + kCoreVersion);
    app.require_subcommand(1);
    app.get_formatter()->label("SUBCOMMAND", "VERB");
    app.get_formatter()->label("Subcommands", "Verbs");
    app.footer("Exit status: 0 done, 1 refused or a check with findings, 2 wrong use. Refusals are one sentence on standard\n"
               "error. \"groundbook VERB --help\" tells more of a verb; docs/command-line.md has examples.\n\n"
               "A verdict says whether a figure meets the job's specification. The gauge's licence, the local radiation rules\n"
               "and the manufacturer's instructions govern its use; a licensed professional decides about the work.");
    int status = command::kDone;
    command::addMake(app, status);
    command::addImport(app, status);
    command::addEvaluate(app, status);
    command::addShow(app, status);
    command::addExport(app, status);
    command::addCoverage(app, status);
    command::addSite(app, status);
    command::addBackground(app, status);
    command::addCrs(app, status);
    command::addCheck(app, status);
    command::addLots(app, status);
    command::addUnusual(app, status);
    command::addReview(app, status);
    command::addDraw(app, status);
    command::addRules(app, status);
    command::addHistory(app, status);
    command::addMerge(app, status);
    command::addRebuild(app, status);
    command::addKeys(app, status);
    command::addRetire(app, status);
    command::addServer(app, status);
    command::addAdmit(app, status);
    command::addPush(app, status);
    command::addPull(app, status);
    command::addPublish(app, status);
    command::addPlay(app, status);
#ifdef GROUNDCOUNT_PAPER
    command::addSheet(app, status);
#endif
    try {  // CLI11 reports wrong use by exceptions; core throws nothing
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? command::kDone : command::kUsage;
    }
    return status;
}
