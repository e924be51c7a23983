#include "shaded/picture_maker.hpp"

#include <rampwright/core/problem.hpp>

#include <algorithm>
#include <cstring>

namespace rampwright::ui {
namespace {

constexpr double picture_chord = 5e-5, picture_crease = 0.6; ///< m, rad
constexpr std::size_t bodies_kept = 4;                       ///< about one a car: tabs go to and fro

/// Everything the wood's surface depends on.
std::vector<double> key_of(const BodyShape& shape) {
    std::vector<double> key{shape.edge_radius};
    for (const Outline* outline : {&shape.profile, &shape.plan}) {
        key.push_back(static_cast<double>(outline->size()));
        for (const OutlinePoint& point : *outline)
            key.insert(key.end(), {point.at.x(), point.at.y(), point.smooth ? 1. : 0.});
    }
    for (const Cut& cut : shape.cuts) {
        const auto* pocket = std::get_if<Pocket>(&cut);
        const auto* bore = std::get_if<Bore>(&cut);
        const Vec3& from = pocket ? pocket->low : bore->from;
        const Vec3& to = pocket ? pocket->high : bore->to;
        key.insert(key.end(), {from.x(), from.y(), from.z(), to.x(), to.y(), to.z()});
        key.insert(key.end(), {bore ? bore->diameter : -1., bore && bore->pointed ? 1. : 0.});
    }
    return key;
}

} // namespace

PictureMaker::PictureMaker(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

PictureMaker::~PictureMaker() {
    pool_.waitForDone();
}

void PictureMaker::want(PictureJob job) {
    next_ = std::move(job);
    if (!running_) start();
}

void PictureMaker::start() {
    running_ = true;
    pool_.start([this, job = std::move(*next_)] {
        const QImage picture = make(job);
        QMetaObject::invokeMethod(
            this,
            [this, picture] {
                running_ = false;
                if (next_) start();
                Q_EMIT made(picture);
            },
            Qt::QueuedConnection);
    });
    next_.reset();
}

std::shared_ptr<const LitSurface> PictureMaker::body_of(const BodyShape& shape) {
    std::vector<double> key = key_of(shape);
    const auto known =
        std::find_if(bodies_.begin(), bodies_.end(), [&](const Body& body) { return body.key == key; });
    if (known != bodies_.end()) {
        bodies_.splice(bodies_.begin(), bodies_, known);
        return bodies_.front().surface;
    }
    ++bodies_made_;
    auto surface =
        std::make_shared<const LitSurface>(light_up(body_facets(shape, picture_chord), picture_crease));
    bodies_.push_front({std::move(key), std::move(surface)});
    if (bodies_.size() > bodies_kept) bodies_.pop_back();
    return bodies_.front().surface;
}

QImage PictureMaker::make(const PictureJob& job) {
    if (job.size.isEmpty()) return {};
    try {
        Project project;
        project.scale.division = job.scale_division;
        project.cars = {job.plan};
        const CarModel car = build_car(project, 0);
        const Scene scene = make_scene(job.plan, car, body_of(finished_body(job.plan, car)));
        RenderSettings settings;
        settings.width = job.size.width();
        settings.height = job.size.height();
        settings.pixels_per_metre = scale_to_fit(scene, job.from.raise, settings.width, settings.height);
        settings.centre = (scene.low + scene.high) / 2;
        settings.samples = job.samples;
        settings.number = job.number;
        settings.shadow = job.dark ? 0.6f : 0.25f;
        // On dark paper light edges keep a dark car from sinking into it.
        settings.ink = job.dark ? Colour(0.62f, 0.64f, 0.68f) : Colour(0.12f, 0.11f, 0.10f);
        settings.edges = job.dark ? 0.35f : 0.5f;
        const Picture picture = render(scene, job.from, settings);
        QImage image(picture.width, picture.height, QImage::Format_ARGB32_Premultiplied);
        const auto row = static_cast<std::size_t>(picture.width);
        for (int y = 0; y < picture.height; ++y)
            std::memcpy(image.scanLine(y), picture.pixels.data() + static_cast<std::size_t>(y) * row,
                        4 * row);
        image.setDevicePixelRatio(job.pixel_ratio);
        return image;
    } catch (const Problem&) {
        return {}; // said by the figures
    }
}

} // namespace rampwright::ui
