// The ledger's tables as PDF and as a spreadsheet.
#include "core/files/text_file.h"
#include "ui/look/lettering.h"
#include "ui/report/ledger_paper.h"
#include "ui/report/pdf_pages.h"

#include <QDir>
#include <QFontMetricsF>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <numeric>
#include <xlsxwriter.h>

namespace panside {
namespace {

[[noreturn]] void refusePaper(const std::string& place, const std::string& why) {
    throw FileFault{FileTrouble::machine,
                    place + ": cannot be written: " + why + " Choose a folder that is there and may be written."};
}

class LedgerPages {
public:
    explicit LedgerPages(PdfPages& paper) : paper_{paper}, painter_{paper.painter()} {}
    void line(const QString& words, double millimetres, bool bold) {
        const QFont font = lettering(Measure{}, millimetres, bold);
        painter_.setFont(font);
        const double wide = paper_.page().width();
        const double high = painter_.boundingRect(QRectF{0, 0, wide, 1000}, Qt::TextWordWrap, words).height() * 1.2;
        room(high);
        painter_.drawText(QRectF{0, y_, wide, high}, Qt::TextWordWrap, words);
        y_ += high;
    }
    void table(const PaperTable& table) {
        y_ += 8;
        line(table.title, 3, true);
        font_ = lettering(Measure{}, paperLetters, false);
        const int abreast = widths(table);
        if (abreast > 1) {
            inBlocks(table, abreast);
        } else {
            row(table.headings, true);
            for (const QStringList& cells : table.rows)
                row(cells, false);
        }
        if (!table.note.isEmpty())
            line(table.note, paperLetters, false);
    }

private:
    void room(double high) {
        if (y_ + high <= paper_.page().bottom())
            return;
        paper_.newPage();
        y_ = 0;
    }
    // As wide as its words want; shared out where the page is narrower, and with some air where it is wider. How many
    // blocks of a long, narrow table the page takes side by side.
    int widths(const PaperTable& table) {
        constexpr double air = 14, most = 1.6;
        constexpr std::size_t manyRows = 12;
        QFont strong = font_;
        strong.setBold(true);
        widths_.assign(static_cast<std::size_t>(table.headings.size()), 0);
        const auto widen = [&](const QStringList& cells, const QFontMetricsF& metrics) {
            for (qsizetype i = 0; i < std::min<qsizetype>(cells.size(), table.headings.size()); ++i)
                widths_[static_cast<std::size_t>(i)] = std::max(widths_[static_cast<std::size_t>(i)],
                                                                metrics.horizontalAdvance(asPrinted(cells[i])) + air);
        };
        widen(table.headings, QFontMetricsF{strong});
        for (const QStringList& cells : table.rows)
            widen(cells, QFontMetricsF{font_});
        const double page = paper_.page().width();
        double all = 0;
        for (double& width : widths_)
            all += (width = std::min(width, page / 2));
        if (const int abreast = static_cast<int>((page + between) / (all + between));
            abreast > 1 && table.rows.size() >= manyRows)
            return abreast;
        for (double& width : widths_)
            width *= std::min(most, page / all);
        return 1;
    }
    // Down one block, then down the next beside it; on the next page again.
    void inBlocks(const PaperTable& table, int abreast) {
        const double line = QFontMetricsF{font_}.height() + 2;
        const double step = std::accumulate(widths_.begin(), widths_.end(), between);
        for (std::size_t next = 0; next < table.rows.size();) {
            room(4 * line);
            const double top = y_;
            const auto left = table.rows.size() - next;
            const auto each =
                std::min((left + static_cast<std::size_t>(abreast) - 1) / static_cast<std::size_t>(abreast),
                         static_cast<std::size_t>((paper_.page().bottom() - top) / line) - 1);
            double lowest = top;
            for (int block = 0; block < abreast && next < table.rows.size(); ++block) {
                x_ = block * step;
                y_ = top;
                row(table.headings, true);
                for (std::size_t i = 0; i < each && next < table.rows.size(); ++i)
                    row(table.rows[next++], false);
                lowest = std::max(lowest, y_);
            }
            x_ = 0;
            y_ = lowest;
        }
    }
    void row(const QStringList& cells, bool bold) {
        constexpr int wrap = Qt::TextWordWrap | Qt::TextWrapAnywhere; // inside a word only where it is too long
        QFont font = font_;
        font.setBold(bold);
        painter_.setFont(font);
        const auto each = [&](const auto& use) {
            double x = x_;
            for (std::size_t i = 0; i < widths_.size() && static_cast<qsizetype>(i) < cells.size(); ++i) {
                use(QRectF{x, y_, widths_[i] - 3, 1000}, asPrinted(cells[static_cast<qsizetype>(i)]));
                x += widths_[i];
            }
        };
        double high = 0;
        each([&](const QRectF& box, const QString& words) {
            high = std::max(high, painter_.boundingRect(box, wrap, words).height());
        });
        room(high + 2);
        each([&](const QRectF& box, const QString& words) { painter_.drawText(box, wrap, words); });
        y_ += high + 2;
    }
    static constexpr double between = 30; // of two blocks
    PdfPages& paper_;
    QPainter& painter_;
    QFont font_;
    std::vector<double> widths_;
    double x_ = 0, y_ = 0;
};

} // namespace

void paperAsPdf(const LedgerPaper& paper, const std::string& place) {
    PdfPages pages{place, paper.title, QPageLayout::Landscape}; // its tables are broad
    LedgerPages printed{pages};
    printed.line(paper.title, 4, true);
    for (const PaperTable& table : paper.tables)
        printed.table(table);
    for (const QString& caution : paper.cautions)
        printed.line(caution, paperLetters, false);
    pages.finish();
}

void paperAsSheet(const LedgerPaper& paper, const std::string& place) {
    // The library writes files only: it writes one of ours, whose bytes then go where the person wants them.
    const QTemporaryDir own;
    const std::string made = QDir{own.path()}.filePath(QStringLiteral("book.xlsx")).toStdString();
    lxw_workbook* book = workbook_new(made.c_str());
    lxw_format* bold = workbook_add_format(book);
    format_set_bold(bold);
    int number = 0;
    for (const PaperTable& table : paper.tables) {
        // A sheet's name may be short and holds no brackets or slashes; two tables may not share one.
        const QString name = QString::number(++number) + u' ' +
                             QString{table.title}.remove(QRegularExpression{QStringLiteral("[\\[\\]:*?/\\\\]")});
        lxw_worksheet* sheet = workbook_add_worksheet(book, name.left(LXW_SHEETNAME_MAX).toUtf8().constData());
        worksheet_set_column(sheet, 0, 20, 14, nullptr);
        worksheet_freeze_panes(sheet, 1, 0);
        lxw_row_t row = 0;
        const auto write = [&](const QStringList& cells, lxw_format* format) {
            for (qsizetype i = 0; i < cells.size(); ++i) {
                bool isNumber = false;
                const double value = cells[i].toDouble(&isNumber);
                const auto column = static_cast<lxw_col_t>(i);
                // A lot's code is words, whatever it looks like.
                if (isNumber && row > 0 && i > 0)
                    worksheet_write_number(sheet, row, column, value, format);
                else
                    worksheet_write_string(sheet, row, column, cells[i].toUtf8().constData(), format);
            }
            ++row;
        };
        write(table.headings, bold);
        for (const QStringList& cells : table.rows)
            write(cells, nullptr);
        if (!table.note.isEmpty())
            write({table.note}, nullptr);
    }
    const lxw_error error = workbook_close(book);
    if (error != LXW_NO_ERROR)
        refusePaper(place, lxw_strerror(error));
    writeText(place, readText(made));
}

void writePaper(const LedgerPaper& paper, const std::string& place) {
    if (place.ends_with(".csv"))
        writeText(place, paperAsCsv(paper));
    else if (place.ends_with(".xlsx"))
        paperAsSheet(paper, place);
    else
        paperAsPdf(paper, place.ends_with(".pdf") ? place : place + ".pdf");
}

} // namespace panside
