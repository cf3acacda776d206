// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QTimer>
#include <functional>
#include <optional>
#include <stop_token>

#include "app/crop/crop_history.h"
#include "app/crop/crop_view.h"
#include "core/error/error.h"
#include "core/measure/length_text.h"

class QAction;
class QLabel;
class QPushButton;

namespace matwright::app {

class CropPanel;
class FinalPixels;
class TintedLabel;

// What a crop window is opened for.
struct CropTask {
    QString photoName;  // of the file
    QString slotName;   // "photo slot 4 × 6 in", "Focal photo"
    CropSubject subject;
    CropState start;
    Scale scale = Scale::SixteenthInch;
    int ppi = 300;  // of the final pixels
    // The finished print of a state, on another thread. May be empty: then there is no 100 %.
    std::function<Result<Raster>(const CropState&, std::stop_token)> finalPixels;
};

// The large crop view: the photo in its frame, and its figures. Nothing outside of the window
// changes before it is accepted; then steps() is what was done, one step a gesture. Esc leaves
// everything as it was.
class CropDialog final : public QDialog {
    Q_OBJECT

  public:
    explicit CropDialog(CropTask task, QWidget* parent = nullptr);
    ~CropDialog() override;

    // When they are there: the photo upright, of about screen size, and what evening out needs.
    void setCopy(const QImage& copy);
    void setSample(const Histogram& sample);
    // The photo cannot be had; its crop can still be changed.
    void setMissing(const QString& sentence);

    std::vector<CropHistory::Step> steps() const { return m_history.done(); }
    const CropState& state() const { return m_history.now(); }
    CropView& view() { return *m_view; }
    CropPanel& panel() { return *m_panel; }
    FinalPixels& finalPixels() { return *m_final; }
    // Whether the final pixels are what is shown, or wanted.
    bool showsFinal() const;
    void setShowsFinal(bool on);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;

  private:
    QWidget* makeSide();
    QWidget* makeButtons();
    void connectView();
    void connectPanel();
    void addUndo();
    void take(const CropState& state, const QString& label, int gesture);
    void takeZoom(int zoom, int gesture);
    void takeAngle(Angle angle, int gesture);
    void takeBorder(Length border, int gesture);
    void showState();
    void showTone();
    void showBefore(bool shown);
    void changeLines();
    void changeWhatIsShown(bool final);
    void showHint();
    void makeFinal();

    const CropTask m_task;
    CropHistory m_history;
    CropView* m_view;
    CropPanel* m_panel;
    FinalPixels* m_final;
    QTimer m_finalTimer;
    QPushButton* m_finalButton;
    TintedLabel* m_news;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    std::optional<Histogram> m_sample;
    bool m_isBefore = false;
};

}  // namespace matwright::app
