#include "files/template_export.hpp"

#include "session/session.hpp"
#include "text/figure_text.hpp"

#include <rampwright/templates/templates.hpp>

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

namespace rampwright::ui {
namespace {

struct TemplateText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::TemplateExport)
};

} // namespace

QString export_templates(QWidget& window, const Session& session) {
    const QStringList filters{TemplateText::tr("Templates to print or cut (*.svg)"),
                              TemplateText::tr("Templates for a drawing program (*.dxf)"),
                              TemplateText::tr("The wood as a solid (*.stl)"),
                              TemplateText::tr("Weight schedule (*.csv)")};
    QFileDialog dialog(&window, TemplateText::tr("Export Templates"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setNameFilters(filters);
    dialog.setDefaultSuffix(QStringLiteral("svg"));
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&](const QString& filter) {
        const auto kind = filters.indexOf(filter);
        if (kind >= 0)
            dialog.setDefaultSuffix(
                QString::fromStdString(template_suffixes()[static_cast<std::size_t>(kind)]).mid(1));
    });
    dialog.selectFile(QString::fromStdString(session.plan().name));
    if (session.has_file())
        dialog.setDirectory(QString::fromStdString(session.path().parent_path().string()));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return {};
    const QString path = dialog.selectedFiles().front();
    const QString suffix = QLatin1Char('.') + QFileInfo(path).suffix().toLower();
    try {
        write_file(path.toStdString(), template_file(session.project(), session.car(), suffix.toStdString()));
        return TemplateText::tr("Written: %1").arg(path);
    } catch (const Problem& problem) {
        QMessageBox::warning(&window, TemplateText::tr("Not Written"), problem_text(problem));
        return {};
    }
}

} // namespace rampwright::ui
