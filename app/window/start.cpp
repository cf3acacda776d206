// SPDX-License-Identifier: MIT
#include "app/window/start.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QEvent>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <memory>
#include <optional>
#include <span>
#include <string_view>

#include "app/cutting/cutting_part.h"
#include "app/files/open_work.h"
#include "app/library/library_part.h"
#include "app/parts/parts.h"
#include "app/photos/photos_part.h"
#include "app/printing/template_part.h"
#include "app/printplan/print_plan_part.h"
#include "app/prints/prints_part.h"
#include "app/settings/theme.h"
#include "app/window/dialog_questions.h"
#include "app/window/file_flow.h"
#include "app/window/main_window.h"

namespace matwright::app {
namespace {

QCommandLineOption leaveOption() {
    return {QStringLiteral("leave-after-first-paint"),
            QStringLiteral("Close again as soon as the window is painted, to time the start.")};
}

QCommandLineOption checkPartsOption() {
    return {QStringLiteral("check-parts"),
            QStringLiteral("Look that all that is opened later is there, say so, and leave.")};
}

void describe(QCommandLineParser& parser) {
    parser.setApplicationDescription(
        QStringLiteral("Block out a scrapbook page sketch and make a template of it that is true "
                       "to size.\nFor work without a display there is matwright-batch."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOption(leaveOption());
    parser.addOption(checkPartsOption());
    parser.addPositionalArgument(
        QStringLiteral("sketch"),
        QStringLiteral("A sketch (.sketch.svg) or a page in the making (.page.svg) to "
                       "open."),
        QStringLiteral("[sketch]"));
}

bool hasArgument(std::span<char*> arguments, std::initializer_list<std::string_view> wanted) {
    return std::ranges::any_of(arguments, [&](std::string_view argument) {
        return std::ranges::find(wanted, argument) != wanted.end();
    });
}

bool hasDisplay(std::span<char*> arguments) {
    return !qEnvironmentVariableIsEmpty("DISPLAY") ||
           !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
           !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM") ||
           hasArgument(arguments, {"-platform", "--platform"});
}

template <typename Part>
std::optional<Error> faultOf(const QString& folder, const QString& name) {
    const auto part = openPart<Part>(folder, name);
    return part ? std::nullopt : std::optional(part.error());
}

// The exit code of --check-parts.
int checkParts() {
    const QString folder = standardPartsFolder();
    for (const auto& fault : {faultOf<TemplatePart>(folder, QStringLiteral("template")),
                              faultOf<LibraryPart>(folder, QStringLiteral("library")),
                              faultOf<PhotosPart>(folder, QStringLiteral("photos")),
                              faultOf<PrintsPart>(folder, QStringLiteral("prints")),
                              faultOf<CuttingPart>(folder, QStringLiteral("cutting")),
                              faultOf<PrintPlanPart>(folder, QStringLiteral("print-plan"))}) {
        if (fault) {
            std::puts(fault->text().c_str());
            return 1;
        }
    }
    std::puts("All parts are there.");
    return 0;
}

// Answers --help, --version and --check-parts without a display; gives the exit code.
int answer(int& argc, char** argv) {
    const QCoreApplication core(argc, argv);
    QCommandLineParser parser;
    describe(parser);
    parser.process(core);  // leaves by itself for the first two
    return checkParts();
}

// Ends the event loop once the window has been painted for the first time.
class LeaveAfterPaint final : public QObject {
  public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint) {
            // Takes effect once this event is done. quit() would close the window and write its
            // place to the disk first.
            QCoreApplication::exit(0);
        }
        return QObject::eventFilter(watched, event);
    }
};

void goOn(MainWindow& window, const QStringList& paths) {
    window.files().offerRecoveredWork();
    if (!paths.isEmpty() && window.files().mayLeave()) {
        window.files().open(paths.constFirst());
    }
}

int run(const QCommandLineParser& parser) {
    SettingsStore settings;
    keepTheme(*qApp, settings);
    DiskFileStore files;
    OpenWork work(files, standardRecoveryFolder());
    DialogQuestions questions;
    MainWindow window(work, settings, questions);
    questions.setWindow(&window);
    LeaveAfterPaint leave;
    if (parser.isSet(leaveOption())) {
        window.installEventFilter(&leave);
    } else {
        QTimer::singleShot(0, &window, [&] { goOn(window, parser.positionalArguments()); });
    }
    window.show();
    return QApplication::exec();
}

}  // namespace

int startDesktop(int argc, char** argv) {
    QCoreApplication::setApplicationName(QStringLiteral("matwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(MATWRIGHT_VERSION));
    const std::span arguments(argv, static_cast<std::size_t>(argc));
    if (hasArgument(arguments,
                    {"--help", "-h", "--help-all", "--version", "-v", "--check-parts"})) {
        return answer(argc, argv);
    }
    if (!hasDisplay(arguments)) {
        std::fputs(
            "There is no display to open a window on. For work without one use "
            "matwright-batch; see matwright-batch --help.\n",
            stderr);
        return 1;
    }
    const QApplication app(argc, argv);
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Matwright"));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.matwright.matwright"));
    QCommandLineParser parser;
    describe(parser);
    parser.process(app);
    return run(parser);
}

}  // namespace matwright::app
