// SPDX-License-Identifier: MIT
#include <QObject>
#include <cstdlib>

// Ends the program where it is opened: its version must be read without that.
class PartOfAnotherVersion final : public QObject {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.TemplatePart" FILE "earlier_part.json")

  public:
    PartOfAnotherVersion() { std::abort(); }
};

#include "part_of_another_version.moc"
