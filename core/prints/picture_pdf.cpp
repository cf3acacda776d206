// SPDX-License-Identifier: MIT
#include "core/prints/picture_pdf.h"

#include <fmt/format.h>
#include <qpdf/qpdf-c.h>

#include <memory>

#include "core/prints/srgb_profile.h"

namespace matwright {

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

// PDF counts from the bottom.
std::string boxText(const Rect& box, Size media) {
    return fmt::format("[{:.5f} {:.5f} {:.5f} {:.5f}]", box.left().toPoints(),
                       (media.height - box.bottom()).toPoints(), box.right().toPoints(),
                       (media.height - box.top()).toPoints());
}

qpdf_oh stream(qpdf_data document, const std::string& bytes, const char* filter) {
    const qpdf_oh object = qpdf_oh_new_stream(document);
    const qpdf_oh name = filter ? qpdf_oh_new_name(document, filter) : qpdf_oh_new_null(document);
    qpdf_oh_replace_stream_data(document, object,
                                reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(),
                                name, qpdf_oh_new_null(document));
    return object;
}

void setKeys(qpdf_data document, qpdf_oh dictionary,
             std::initializer_list<std::pair<const char*, std::string>> keys) {
    for (const auto& [key, value] : keys) {
        qpdf_oh_replace_key(document, dictionary, key, qpdf_oh_parse(document, value.c_str()));
    }
}

qpdf_oh colourSpace(qpdf_data document, const std::string& profile) {
    const qpdf_oh icc = stream(document, profile, nullptr);
    setKeys(document, qpdf_oh_get_dict(document, icc), {{"/N", "3"}, {"/Alternate", "/DeviceRGB"}});
    const qpdf_oh space = qpdf_oh_new_array(document);
    qpdf_oh_append_item(document, space, qpdf_oh_new_name(document, "/ICCBased"));
    qpdf_oh_append_item(document, space, icc);
    return qpdf_make_indirect_object(document, space);
}

qpdf_oh pictureOf(qpdf_data document, const PicturePage& page, qpdf_oh space) {
    const qpdf_oh picture = stream(document, page.jpeg, "/DCTDecode");
    const qpdf_oh facts = qpdf_oh_get_dict(document, picture);
    setKeys(document, facts,
            {{"/Type", "/XObject"},
             {"/Subtype", "/Image"},
             {"/Width", std::to_string(page.pixels.width)},
             {"/Height", std::to_string(page.pixels.height)},
             {"/BitsPerComponent", "8"}});
    qpdf_oh_replace_key(document, facts, "/ColorSpace", space);
    return picture;
}

bool addPage(qpdf_data document, const PicturePage& page, qpdf_oh space) {
    const qpdf_oh sheet = qpdf_oh_new_dictionary(document);
    setKeys(document, sheet,
            {{"/Type", "/Page"},
             {"/MediaBox", boxText(Rect::at({}, page.media), page.media)},
             {"/TrimBox", boxText(page.trim, page.media)},
             {"/Resources", "<< /XObject << >> >>"}});
    if (page.bleed) {
        setKeys(document, sheet, {{"/BleedBox", boxText(*page.bleed, page.media)}});
    }
    const qpdf_oh resources = qpdf_oh_get_key(document, sheet, "/Resources");
    qpdf_oh_replace_key(document, qpdf_oh_get_key(document, resources, "/XObject"), "/Picture",
                        pictureOf(document, page, space));
    const std::string drawing =
        fmt::format("q {:.5f} 0 0 {:.5f} 0 0 cm /Picture Do Q\n", page.media.width.toPoints(),
                    page.media.height.toPoints());
    qpdf_oh_replace_key(document, sheet, "/Contents", stream(document, drawing, nullptr));
    const qpdf_oh indirect = qpdf_make_indirect_object(document, sheet);
    return succeeded(qpdf_add_page(document, document, indirect, QPDF_FALSE));
}

void describe(qpdf_data document, const std::string& title) {
    const qpdf_oh wishes = qpdf_oh_parse(
        document, "<< /PrintScaling /None /PickTrayByPDFSize true /DisplayDocTitle true >>");
    qpdf_oh_replace_key(document, qpdf_get_root(document), "/ViewerPreferences", wishes);
    const qpdf_oh info = qpdf_oh_new_dictionary(document);
    qpdf_oh_replace_key(document, info, "/Title",
                        qpdf_oh_new_unicode_string(document, title.c_str()));
    qpdf_oh_replace_key(document, qpdf_get_trailer(document), "/Info",
                        qpdf_make_indirect_object(document, info));
}

Result<std::string> written(const Document& document) {
    if (!succeeded(qpdf_init_write_memory(document.get()))) {
        return std::unexpected(failure(document));
    }
    qpdf_set_minimum_pdf_version(document.get(), "1.7");
    qpdf_set_object_stream_mode(document.get(), qpdf_o_generate);
    qpdf_set_deterministic_ID(document.get(), 1);
    if (!succeeded(qpdf_write(document.get())) || qpdf_has_error(document.get())) {
        return std::unexpected(failure(document));
    }
    return std::string(reinterpret_cast<const char*>(qpdf_get_buffer(document.get())),
                       qpdf_get_buffer_length(document.get()));
}

}  // namespace

Result<std::string> picturePdf(const std::vector<PicturePage>& pages, const std::string& title) {
    if (pages.empty()) {
        return std::unexpected(Error{ErrorCode::Unsupported, "There is no print to write.", ""});
    }
    const Result<std::string> profile = srgbProfile();
    if (!profile) {
        return std::unexpected(profile.error());
    }
    const Document document(qpdf_init());
    qpdf_silence_errors(document.get());
    qpdf_set_suppress_warnings(document.get(), 1);
    if (!succeeded(qpdf_empty_pdf(document.get()))) {
        return std::unexpected(failure(document));
    }
    const qpdf_oh space = colourSpace(document.get(), *profile);
    for (const PicturePage& page : pages) {
        if (!addPage(document.get(), page, space)) {
            return std::unexpected(failure(document));
        }
    }
    describe(document.get(), title);
    return written(document);
}

}  // namespace matwright
