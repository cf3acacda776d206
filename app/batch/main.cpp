// SPDX-License-Identifier: MIT
#include <QGuiApplication>
#include <iostream>
#include <memory>

#include "app/batch/command_line.h"
#include "app/batch/photo_part.h"
#include "app/folders/personal_folders.h"
#include "app/parts/parts.h"
#include "app/settings/settings_file.h"

namespace {

// Standard error belongs to our own sentences; of Qt's, only what ends the program is one.
void quieten(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type == QtFatalMsg) {
        std::cerr << "matwright-batch: " << qFormatLogMessage(type, context, message).toStdString()
                  << '\n';
    }
}

matwright::Result<matwright::app::PhotoCommands*> openPhotoCommands() {
    using namespace matwright::app;
    // There is no QCoreApplication yet to ask for the program's folder.
    std::error_code unknown;
    const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", unknown);
    const QString folder = partsFolderOf(QString::fromStdString(program.parent_path().string()));
    const auto part = openPart<PhotoPart>(folder, QStringLiteral("photo-commands"));
    if (!part) {
        return std::unexpected(part.error());
    }
    return &(*part)->commands();
}

}  // namespace

int main(int argc, char** argv) {
    qInstallMessageHandler(quieten);
    // Never a window, so never a display.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    matwright::DiskFileStore files;
    const std::filesystem::path chosen = matwright::app::chosenLibraryFolder();
    std::unique_ptr<QGuiApplication> painting;
    const auto startPainting = [&] {
        if (!painting) {
            painting = std::make_unique<QGuiApplication>(argc, argv);
        }
    };
    matwright::app::BatchPorts ports{
        files,
        std::cout,
        std::cerr,
        startPainting,
        chosen.empty() ? matwright::app::personalLibraryFolder() : chosen,
        matwright::app::personalCacheFolder(),
        !chosen.empty(),
        openPhotoCommands,
        matwright::app::personalDataFolder()};
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    const int code = matwright::app::runBatch(arguments, ports);
    if (!std::cout.flush()) {
        std::cerr << "matwright-batch: The results could not be written to standard output.\n";
        return matwright::app::CouldNotWrite;
    }
    return code;
}
