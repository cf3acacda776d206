// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QImage>
#include <QStringList>
#include <optional>

namespace matwright::app {

// What other programs say about a file of ours.

// The program's standard output, "" where it fails. `program` must be installed (see isInstalled).
QByteArray outputOf(const QString& program, const QStringList& arguments, int* exitCode = nullptr);
bool isInstalled(const QString& program);

// The page (1 first) rendered by poppler, grey.
QImage renderedPage(const QString& pdfPath, int page, int ppi);

// The edges of the dark area along one line of pixels, in inches from the image's start: first dark
// pixel and the first one after the last dark one. Nothing where all is light.
struct DarkRun {
    double first;
    double end;
};
std::optional<DarkRun> darkInRow(const QImage& image, int y, double ppi);
std::optional<DarkRun> darkInColumn(const QImage& image, int x, double ppi);

}  // namespace matwright::app
