// SPDX-License-Identifier: MIT
#include "core/photo/metadata_text.h"

#include <gtest/gtest.h>

namespace matwright {
namespace {

std::string packet(const std::string& description, const std::string& prefix = "xmp") {
    return "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>"
           "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF "
           "xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\" "
           "xmlns:exif=\"http://ns.adobe.com/exif/1.0/\" xmlns:" +
           prefix + "=\"http://ns.adobe.com/xap/1.0/\">" + description +
           "</rdf:RDF></x:xmpmeta><?xpacket end=\"w\"?>";
}

TEST(ExifTime, IsReadAsItIsWritten) {
    EXPECT_EQ(exifTime("2026:07:14 16:03:22"), "2026-07-14 16:03:22");
    EXPECT_EQ(exifTime("2026:07:14 16:03:22 (2026:07:14 16:03:22, ASCII, 20 components)"),
              "2026-07-14 16:03:22");
    EXPECT_EQ(exifTime("2024:02:29 00:00:00"), "2024-02-29 00:00:00");
    EXPECT_EQ(exifTime("2016:12:31 23:59:60"), "2016-12-31 23:59:60");
}

TEST(ExifTime, IsNothingForADayThatIsNone) {
    for (const char* text : {"", "0000:00:00 00:00:00", "2026:13:01 00:00:00",
                             "2023:02:29 10:00:00", "2026:00:10 10:00:00", "2026:07:14 24:00:00",
                             "2026:07:14 12:60:00", "2026:07:14 12:00:61", "    :  :     :  :  ",
                             "2026-07-14 16:03:22", "2026:07:14", "2026:07:14 16:03",
                             "2026:07:14T16:03:22", "+026:07:14 16:03:22", "2026:07:14 16:03:2x"}) {
        EXPECT_EQ(exifTime(text), std::nullopt) << text;
    }
}

TEST(XmpTime, IsTheTimeOfThePlace) {
    EXPECT_EQ(xmpTime("2026-07-14T16:03:22"), "2026-07-14 16:03:22");
    EXPECT_EQ(xmpTime("2026-07-14T16:03:22.53+02:00"), "2026-07-14 16:03:22");
    EXPECT_EQ(xmpTime("2026-07-14T16:03Z"), "2026-07-14 16:03:00");
    EXPECT_EQ(xmpTime("2026-07-14T16:03"), "2026-07-14 16:03:00");
    EXPECT_EQ(xmpTime("2026-07-14"), std::nullopt);
    EXPECT_EQ(xmpTime("2026-07"), std::nullopt);
    EXPECT_EQ(xmpTime("2026-02-30T16:03:22"), std::nullopt);
    EXPECT_EQ(xmpTime("2026-07-14T16:03:2"), std::nullopt);
}

TEST(Xmp, GivesARatingFromAttributeOrElement) {
    EXPECT_EQ(readXmp(packet("<rdf:Description xmp:Rating=\"3\"/>")).rating, 3);
    EXPECT_EQ(
        readXmp(packet("<rdf:Description><xmp:Rating>4</xmp:Rating></rdf:Description>")).rating, 4);
    EXPECT_EQ(readXmp(packet("<rdf:Description/><rdf:Description xmp:Rating=\"-1\"/>")).rating, -1);
    EXPECT_EQ(readXmp(packet("<rdf:Description xmp:Rating=\"5.0\"/>")).rating, 5);
}

TEST(Xmp, GoesByTheNamespaceAndNotByItsPrefix) {
    EXPECT_EQ(readXmp(packet("<rdf:Description xap:Rating=\"2\"/>", "xap")).rating, 2);
    EXPECT_EQ(readXmp(packet("<rdf:Description xmlns:o=\"urn:other\" o:Rating=\"2\"/>")).rating,
              std::nullopt);
    EXPECT_EQ(readXmp(packet("<rdf:Description q:Rating=\"2\"/>")).rating, std::nullopt);
}

TEST(Xmp, GivesNoRatingThatIsNone) {
    for (const char* text : {"", "six", "6", "-2", "2.5", "nan", "1e0", "3 stars", "99999999999"}) {
        EXPECT_EQ(
            readXmp(packet("<rdf:Description xmp:Rating=\"" + std::string(text) + "\"/>")).rating,
            std::nullopt)
            << text;
    }
}

TEST(Xmp, PrefersTheTimeOfCaptureToThatOfTheFile) {
    const std::string both =
        "<rdf:Description exif:DateTimeOriginal=\"2026-07-14T16:03:22\" "
        "xmp:CreateDate=\"2026-07-15T00:00:00\"/>";
    EXPECT_EQ(readXmp(packet(both)).taken, "2026-07-14 16:03:22");
    EXPECT_EQ(readXmp(packet("<rdf:Description xmp:CreateDate=\"2026-07-15T00:00:00\"/>")).taken,
              "2026-07-15 00:00:00");
}

TEST(Xmp, IsReadWithZeroBytesBehindIt) {
    std::string text = packet("<rdf:Description xmp:Rating=\"3\"/>");
    text += std::string(3, '\0');
    EXPECT_EQ(readXmp(text).rating, 3);
}

TEST(Xmp, GivesNothingOfAPacketThatIsNone) {
    const std::string sound = packet("<rdf:Description xmp:Rating=\"3\"/>");
    EXPECT_EQ(readXmp(""), XmpFacts{});
    EXPECT_EQ(readXmp(std::string(100, '\0')), XmpFacts{});
    EXPECT_EQ(readXmp(sound.substr(0, sound.size() - 30)), XmpFacts{});
    EXPECT_EQ(readXmp("<!DOCTYPE x [<!ENTITY a \"3\">]>" + sound), XmpFacts{});
    EXPECT_EQ(readXmp(sound + std::string(maxXmpBytes, ' ')), XmpFacts{});
    EXPECT_EQ(readXmp("<rdf:Description xmp:Rating=\"3\"/>"), XmpFacts{});
}

TEST(Xmp, IsReadHoweverDeepItIs) {
    std::string deep;
    for (int i = 0; i < 200'000; ++i) {
        deep += "<a>";
    }
    EXPECT_EQ(readXmp(deep), XmpFacts{});
}

}  // namespace
}  // namespace matwright
