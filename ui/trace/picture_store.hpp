#pragma once

#include <QHash>
#include <QImage>
#include <QObject>
#include <QString>

namespace rampwright::ui {

/// The pictures laid under the drawing: read and made smaller on another thread, kept while the project is
/// open.
class PictureStore : public QObject {
    Q_OBJECT

public:
    struct Picture {
        QImage image;  ///< null until it is read, and where it cannot be
        QString fault; ///< why it cannot be read, in plain words
        bool read = false;
    };

    explicit PictureStore(QObject* parent = nullptr) : QObject(parent) {}

    /// What is known of a picture by now; the first time it is asked for it is sent for.
    const Picture& picture(const QString& path);
    /// Reads those anew that could not be read: they may have come back.
    void try_again();
    /// Forgets all.
    void clear();

    /// Reads a picture the right way up, its longer side at most `most_pixels`; drawings are made that size.
    static Picture load(const QString& path);
    static constexpr int most_pixels = 2400;
    /// Whether a file's name ends as pictures' do that can be read.
    static bool is_picture(const QString& path);
    /// For a file dialog.
    static QString file_filter();

Q_SIGNALS:
    void changed();

private:
    QHash<QString, Picture> pictures_;
    int generation_ = 0; ///< what was sent for before `clear` is not kept
};

} // namespace rampwright::ui
