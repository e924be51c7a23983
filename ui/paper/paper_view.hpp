#pragma once

#include <QAbstractScrollArea>
#include <QImage>

#include <map>

namespace rampwright::ui {

class PaperDesk;

/// The sheet's very pages one below the other, to scroll and to zoom.
class PaperView : public QAbstractScrollArea {
    Q_OBJECT

public:
    explicit PaperView(PaperDesk& desk, QWidget* parent = nullptr);

    /// The page that most of the view shows, from 0.
    std::size_t page() const;
    std::size_t page_count() const;
    void show_page(std::size_t page);
    /// Screen pixels a millimetre of paper.
    double pixels_per_mm() const;
    void zoom_by(double factor);
    /// As wide as the view.
    void zoom_to_width();

Q_SIGNALS:
    void page_changed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    void refresh();
    void lay_out();
    QRectF page_place(std::size_t page) const; ///< in the view
    QSizeF page_size() const;                  ///< pixels
    const QImage& picture(std::size_t page);

    PaperDesk& desk_;
    double zoom_ = 1; ///< times the width of the view
    std::map<std::size_t, QImage> pictures_;
    QPoint grabbed_;
    bool stale_ = true;
};

} // namespace rampwright::ui
