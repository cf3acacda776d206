// SPDX-License-Identifier: MIT
#include "app/rendering/pdf_boxes.h"

#include <fmt/format.h>
#include <qpdf/qpdf-c.h>

#include <memory>
#include <optional>

namespace matwright::app {

namespace {

// The library's C interface: clang cannot read its C++ headers as C++23.
struct Closing {
    void operator()(qpdf_data document) const { qpdf_cleanup(&document); }
};
using Document = std::unique_ptr<std::remove_pointer_t<qpdf_data>, Closing>;

bool succeeded(QPDF_ERROR_CODE code) {
    return (code & QPDF_ERRORS) == 0;
}

Error failure(const Document& document) {
    const char* why =
        qpdf_has_error(document.get())
            ? qpdf_get_error_message_detail(document.get(), qpdf_get_error(document.get()))
            : "";
    return {ErrorCode::WriteFailed,
            fmt::format("The PDF could not be made ({}); nothing was written.", why), ""};
}

qpdf_oh boxArray(qpdf_data document, const PdfBoxes& boxes, const Rect& box) {
    const Length height = boxes.media.height;
    const qpdf_oh array = qpdf_oh_new_array(document);
    for (const Length side : {box.left(), height - box.bottom(), box.right(), height - box.top()}) {
        qpdf_oh_append_item(document, array,
                            qpdf_oh_new_real_from_double(document, side.toPoints(), 5));
    }
    return array;
}

void setBoxes(qpdf_data document, qpdf_oh page, const PdfBoxes& boxes) {
    const Rect media = Rect::at({}, boxes.media);
    qpdf_oh_replace_key(document, page, "/MediaBox", boxArray(document, boxes, media));
    qpdf_oh_replace_key(document, page, "/TrimBox", boxArray(document, boxes, boxes.trim));
}

void askForTrueSize(qpdf_data document) {
    const qpdf_oh wishes = qpdf_oh_new_dictionary(document);
    qpdf_oh_replace_key(document, wishes, "/PrintScaling", qpdf_oh_new_name(document, "/None"));
    qpdf_oh_replace_key(document, wishes, "/PickTrayByPDFSize", qpdf_oh_new_bool(document, 1));
    qpdf_oh_replace_key(document, wishes, "/DisplayDocTitle", qpdf_oh_new_bool(document, 1));
    qpdf_oh_replace_key(document, qpdf_get_root(document), "/ViewerPreferences", wishes);
}

void forgetDates(qpdf_data document) {
    const qpdf_oh info = qpdf_oh_get_key(document, qpdf_get_trailer(document), "/Info");
    if (qpdf_oh_is_dictionary(document, info)) {
        qpdf_oh_remove_key(document, info, "/CreationDate");
        qpdf_oh_remove_key(document, info, "/ModDate");
    }
}

std::optional<QByteArray> written(qpdf_data document) {
    if (!succeeded(qpdf_init_write_memory(document))) {
        return std::nullopt;
    }
    qpdf_set_minimum_pdf_version(document, "1.7");
    qpdf_set_object_stream_mode(document, qpdf_o_generate);
    qpdf_set_deterministic_ID(document, 1);
    if (!succeeded(qpdf_write(document))) {
        return std::nullopt;
    }
    return QByteArray(reinterpret_cast<const char*>(qpdf_get_buffer(document)),
                      static_cast<qsizetype>(qpdf_get_buffer_length(document)));
}

}  // namespace

Result<QByteArray> withTrueBoxes(const QByteArray& pdf, const std::vector<PdfBoxes>& boxes) {
    const Document document(qpdf_init());
    qpdf_silence_errors(document.get());
    qpdf_set_suppress_warnings(document.get(), 1);
    const auto length = static_cast<unsigned long long>(pdf.size());
    if (!succeeded(qpdf_read_memory(document.get(), "page", pdf.constData(), length, nullptr))) {
        return std::unexpected(failure(document));
    }
    const int count = qpdf_get_num_pages(document.get());
    if (count != static_cast<int>(boxes.size())) {
        return std::unexpected(
            Error{ErrorCode::WriteFailed,
                  fmt::format("The PDF came out with {} pages instead of {}; nothing was written.",
                              count, boxes.size()),
                  ""});
    }
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        setBoxes(document.get(), qpdf_get_page_n(document.get(), i), boxes[i]);
    }
    askForTrueSize(document.get());
    forgetDates(document.get());
    std::optional<QByteArray> bytes = written(document.get());
    if (!bytes || qpdf_has_error(document.get())) {
        return std::unexpected(failure(document));
    }
    return std::move(*bytes);
}

}  // namespace matwright::app
