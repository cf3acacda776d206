// SPDX-License-Identifier: MIT
#include "app/rendering/pdf_boxes.h"

#include <fmt/format.h>

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

namespace matwright::app {

namespace {

QPDFObjectHandle points(Length length) {
    return QPDFObjectHandle::newReal(length.toPoints(), 5, true);
}

QPDFObjectHandle boxArray(const PdfBoxes& boxes, const Rect& box) {
    const Length height = boxes.media.height;
    return QPDFObjectHandle::newArray({points(box.left()), points(height - box.bottom()),
                                       points(box.right()), points(height - box.top())});
}

void setBoxes(QPDFObjectHandle page, const PdfBoxes& boxes) {
    page.replaceKey("/MediaBox", boxArray(boxes, Rect::at({}, boxes.media)));
    page.replaceKey("/TrimBox", boxArray(boxes, boxes.trim));
}

void askForTrueSize(QPDF& document) {
    QPDFObjectHandle wishes = QPDFObjectHandle::newDictionary();
    wishes.replaceKey("/PrintScaling", QPDFObjectHandle::newName("/None"));
    wishes.replaceKey("/PickTrayByPDFSize", QPDFObjectHandle::newBool(true));
    wishes.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    document.getRoot().replaceKey("/ViewerPreferences", wishes);
}

void forgetDates(QPDF& document) {
    QPDFObjectHandle info = document.getTrailer().getKey("/Info");
    if (info.isDictionary()) {
        info.removeKey("/CreationDate");
        info.removeKey("/ModDate");
    }
}

QByteArray written(QPDF& document) {
    QPDFWriter writer(document);
    writer.setOutputMemory();
    writer.setMinimumPDFVersion("1.7");
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.setDeterministicID(true);
    writer.write();
    const std::shared_ptr<Buffer> buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()),
            static_cast<qsizetype>(buffer->getSize())};
}

}  // namespace

Result<QByteArray> withTrueBoxes(const QByteArray& pdf, const std::vector<PdfBoxes>& boxes) {
    try {
        QPDF document;
        document.setSuppressWarnings(true);
        document.processMemoryFile("page", pdf.constData(), static_cast<std::size_t>(pdf.size()));
        std::vector<QPDFPageObjectHelper> pages = QPDFPageDocumentHelper(document).getAllPages();
        if (pages.size() != boxes.size()) {
            return std::unexpected(
                Error{ErrorCode::WriteFailed,
                      fmt::format("The PDF came out with {} pages instead of {}; nothing was "
                                  "written.",
                                  pages.size(), boxes.size()),
                      ""});
        }
        for (std::size_t i = 0; i < pages.size(); ++i) {
            setBoxes(pages[i].getObjectHandle(), boxes[i]);
        }
        askForTrueSize(document);
        forgetDates(document);
        return written(document);
    } catch (const std::exception& failure) {
        return std::unexpected(Error{
            ErrorCode::WriteFailed,
            fmt::format("The PDF could not be made ({}); nothing was written.", failure.what()),
            ""});
    }
}

}  // namespace matwright::app
