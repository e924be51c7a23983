#pragma once

#include <rampwright/shaded/render.hpp>

#include <QImage>
#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <list>
#include <optional>

namespace rampwright::ui {

/// One picture of a car to be made.
struct PictureJob {
    CarPlan plan;
    double scale_division = 0; ///< what the car's masses hang on besides its plan
    Viewpoint from;
    QSize size; ///< device pixels
    double pixel_ratio = 1;
    int samples = 2;
    bool dark = false;
    DecalPicture number;
};

/// Makes pictures away from the window's own thread, one at a time; while one is being made only the latest
/// wish is kept. The wood is meshed again only when the wood is another.
class PictureMaker : public QObject {
    Q_OBJECT

public:
    explicit PictureMaker(QObject* parent = nullptr);
    ~PictureMaker() override;

    void want(PictureJob job);
    bool busy() const { return running_; }
    /// How often the wood was meshed so far.
    int bodies_made() const { return bodies_made_; }

Q_SIGNALS:
    /// Null where the car cannot be put together.
    void made(const QImage& picture);

private:
    struct Body {
        std::vector<double> key;
        std::shared_ptr<const LitSurface> surface;
    };
    void start();
    QImage make(const PictureJob& job);
    std::shared_ptr<const LitSurface> body_of(const BodyShape& shape);

    std::list<Body> bodies_; ///< latest first; touched by the one working thread alone
    std::atomic<int> bodies_made_ = 0;
    std::optional<PictureJob> next_;
    bool running_ = false;
    QThreadPool pool_;
};

} // namespace rampwright::ui
