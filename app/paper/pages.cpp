#include "paper/pages.h"

#include "paper/code_mark.h"
#include "paper/paper_ink.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QRegularExpression>

#include <algorithm>
#include <numeric>

namespace groundcount::paper {
namespace {

// Margins and the room of head and foot, points.
constexpr double kMargin = 43;
constexpr double kHead = 62;
constexpr double kFoot = 34;
constexpr double kCell = 3;
constexpr double kGap = 8;

/// Between words; a word wider than its line, a hash, breaks where the line ends.
int wrap(const QFont& font, double width, const QString& text)
{
    const QFontMetricsF metrics(font);
    const auto words = text.split(QRegularExpression(QStringLiteral("\\s")));
    const bool fits = std::all_of(words.begin(), words.end(), [&](const QString& word) { return metrics.horizontalAdvance(word) <= width; });
    return fits ? Qt::TextWordWrap : Qt::TextWrapAnywhere;
}

QRectF bounds(const QFont& font, double width, const QString& text)
{
    return QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 10000), wrap(font, width, text), text.isEmpty() ? QStringLiteral(" ") : text);
}

void write(QPainter& painter, const QFont& font, const QColor& ink, const QRectF& box, int flags, const QString& text)
{
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(box, flags | wrap(font, box.width(), text), text);
}

void line(QPainter& painter, double width, const QColor& ink, double x1, double x2, double y)
{
    painter.setPen(QPen(ink, width));
    painter.drawLine(QPointF(x1, y), QPointF(x2, y));
}

std::vector<double> widthsOf(const Table& table, double width)
{
    const double shares = std::accumulate(table.columns.begin(), table.columns.end(), 0.0, [](double sum, const Column& c) { return sum + c.share; });
    std::vector<double> widths;
    for (const auto& column : table.columns)
        widths.push_back(width * column.share / shares);
    return widths;
}

}  // namespace

QSizeF sizeOf(Format format)
{
    return format == Format::Letter ? QSizeF(612, 792) : QSizeF(595, 842);
}

Pages::Pages(const Document& document, Format format) : m_document(document), m_size(sizeOf(format)), m_pages(1)
{
    lay(document);
}

void Pages::add(Piece piece)
{
    const double room = m_size.height() - 2 * kMargin - kHead - kFoot + 8;
    if (m_used + piece.height > room && !m_pages.back().empty()) {
        m_pages.emplace_back();
        m_used = 0;
    }
    m_used += piece.height;
    m_pages.back().push_back(std::move(piece));
}

void Pages::lay(const Document& document)
{
    for (std::size_t i = 0; i < document.blocks.size(); ++i) {
        const auto& block = document.blocks[i];
        if (const auto* heading = std::get_if<Heading>(&block)) {
            // A heading never stands alone at the foot of a page: it goes with a drawing whole, with the first lines of anything else.
            const auto* drawing = i + 1 < document.blocks.size() ? std::get_if<Drawing>(&document.blocks[i + 1]) : nullptr;
            layHeading(heading->text, drawing ? drawing->height : 40);
        } else if (const auto* facts = std::get_if<Facts>(&block)) {
            layFacts(*facts);
        } else if (const auto* table = std::get_if<Table>(&block)) {
            layTable(*table);
        } else if (const auto* text = std::get_if<Paragraph>(&block)) {
            layText(text->text);
        } else if (const auto* drawing = std::get_if<Drawing>(&block)) {
            add({drawing->height + kGap, [paint = drawing->paint, height = drawing->height](QPainter& p, const QRectF& box) { paint(p, QRectF(box.topLeft(), QSizeF(box.width(), height))); }});
        } else if (const auto* signatures = std::get_if<Signatures>(&block)) {
            laySignatures(*signatures);
        }
    }
}

void Pages::layHeading(const QString& text, double follows)
{
    const double room = m_size.height() - 2 * kMargin - kHead - kFoot + 8;
    if (m_used + 24 + follows > room && !m_pages.back().empty()) {
        m_pages.emplace_back();
        m_used = 0;
    }
    add({24, [text](QPainter& p, const QRectF& box) {
             line(p, 1.5, kInk, box.left(), box.right(), box.top() + 4);
             write(p, headFont(), kInk, box.adjusted(0, 6, 0, 0), Qt::AlignLeft | Qt::AlignTop, text);
         }});
}

void Pages::layText(const QString& text)
{
    const double width = m_size.width() - 2 * kMargin;
    add({bounds(bodyFont(), width, text).height() + kGap, [text](QPainter& p, const QRectF& box) { write(p, bodyFont(), kInk, box, Qt::AlignLeft | Qt::AlignTop, text); }});
}

void Pages::layFacts(const Facts& facts)
{
    const double width = (m_size.width() - 2 * kMargin) / facts.across;
    for (std::size_t from = 0; from < facts.pairs.size(); from += static_cast<std::size_t>(facts.across)) {
        const std::size_t to = std::min(facts.pairs.size(), from + static_cast<std::size_t>(facts.across));
        double height = 0;
        for (std::size_t i = from; i < to; ++i)
            height = std::max(height, bounds(strongFont(), width - kGap, facts.pairs[i].second).height());
        std::vector<std::pair<QString, QString>> row(facts.pairs.begin() + static_cast<std::ptrdiff_t>(from), facts.pairs.begin() + static_cast<std::ptrdiff_t>(to));
        add({height + 15, [row, width, height](QPainter& p, const QRectF& box) {
                 double x = box.left();
                 for (const auto& [label, value] : row) {
                     write(p, labelFont(), kInk2, QRectF(x, box.top(), width - kGap, 10), Qt::AlignLeft | Qt::AlignTop, label);
                     if (value.isEmpty())
                         line(p, 0.5, kInk2, x, x + width - kGap, box.top() + 10 + height);
                     write(p, strongFont(), kInk, QRectF(x, box.top() + 10, width - kGap, height + 2), Qt::AlignLeft | Qt::AlignTop, value);
                     x += width;
                 }
             }});
    }
    add({kGap / 2, [](QPainter&, const QRectF&) {}});
}

void Pages::layTable(const Table& table)
{
    if (table.rows.empty())
        return layText(table.none);
    const auto widths = widthsOf(table, m_size.width() - 2 * kMargin);
    const auto rowPiece = [&table, widths](const QStringList& cells, const QFont& font, const QColor& ink, double weight) {
        double height = 0;
        for (std::size_t i = 0; i < widths.size(); ++i)
            height = std::max(height, bounds(font, widths[i] - 2 * kCell, cells.value(static_cast<qsizetype>(i))).height());
        std::vector<int> flags;
        for (const auto& column : table.columns)
            flags.push_back(column.align == Align::Right ? Qt::AlignRight : Qt::AlignLeft);
        return Piece{height + 2 * kCell, [cells, font, ink, weight, widths, flags, height](QPainter& p, const QRectF& box) {
                         double x = box.left();
                         for (std::size_t i = 0; i < widths.size(); ++i) {
                             write(p, font, ink, QRectF(x + kCell, box.top() + kCell, widths[i] - 2 * kCell, height + 2), flags[i] | Qt::AlignTop, cells.value(static_cast<qsizetype>(i)));
                             x += widths[i];
                         }
                         line(p, weight, weight > 0.6 ? kInk : kHair, box.left(), box.right(), box.bottom());
                     }};
    };
    QStringList titles;
    for (const auto& column : table.columns)
        titles.append(column.title);
    const Piece head = rowPiece(titles, labelFont(), kInk2, 0.8);
    std::size_t page = m_pages.size();
    add(head);
    for (const auto& cells : table.rows) {
        Piece row = rowPiece(cells, bodyFont(), kInk, 0.4);
        add(row);
        if (m_pages.size() != page) {
            // The row began a new page: the head goes above it.
            page = m_pages.size();
            m_pages.back().insert(m_pages.back().begin(), head);
            m_used += head.height;
        }
    }
    add({kGap, [](QPainter&, const QRectF&) {}});
}

void Pages::laySignatures(const Signatures& signatures)
{
    // Beside each other: nobody signs on a page that says nothing.
    add({44, [roles = signatures.roles](QPainter& p, const QRectF& box) {
             const double width = box.width() / static_cast<double>(roles.size());
             for (qsizetype i = 0; i < roles.size(); ++i) {
                 const double left = box.left() + width * static_cast<double>(i);
                 const double y = box.top() + 28;
                 const double split = left + (width - kGap * 2) * 0.68;
                 line(p, 0.8, kInk, left, split - kGap, y);
                 line(p, 0.8, kInk, split, left + width - kGap * 2, y);
                 write(p, labelFont(), kInk2, QRectF(left, y + 2, split - left, 12), Qt::AlignLeft | Qt::AlignTop, roles[i]);
                 write(p, labelFont(), kInk2, QRectF(split, y + 2, width, 12), Qt::AlignLeft | Qt::AlignTop, QCoreApplication::translate("groundcount::paper", "Date"));
             }
         }});
}

void Pages::paintFrame(QPainter& painter, int page) const
{
    const double width = m_size.width() - 2 * kMargin;
    const double code = m_document.code.isEmpty() ? 0 : 44;
    write(painter, titleFont(), kInk, QRectF(kMargin, kMargin - 6, width - code - kGap, 24), Qt::AlignLeft | Qt::AlignTop, m_document.title);
    write(painter, bodyFont(), kInk2, QRectF(kMargin, kMargin + 18, width - code - kGap, 26), Qt::AlignLeft | Qt::AlignTop,
          m_document.job + (m_document.subtitle.isEmpty() ? QString() : '\n' + m_document.subtitle));
    drawCode(painter, m_document.code, QRectF(m_size.width() - kMargin - code, kMargin - 8, code, code));
    line(painter, 2, kInk, kMargin, m_size.width() - kMargin, kMargin + kHead - 18);
    const double foot = m_size.height() - kMargin + 4;
    line(painter, 0.5, kInk2, kMargin, m_size.width() - kMargin, foot - 4);
    const QString record = m_document.code.isEmpty() ? QString() : QCoreApplication::translate("groundcount::paper", "Record %1").arg(shortCode(m_document.code)) + "   ";
    write(painter, labelFont(), kInk2, QRectF(kMargin, foot, width * 0.8, 22), Qt::AlignLeft | Qt::AlignTop, record + m_document.book + '\n' + m_document.made);
    write(painter, labelFont(), kInk2, QRectF(kMargin, foot, width, 12), Qt::AlignRight | Qt::AlignTop,
          QCoreApplication::translate("groundcount::paper", "Page %1 of %2").arg(page + 1).arg(count()));
}

void Pages::paint(QPainter& painter, int page) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintFrame(painter, page);
    double y = kMargin + kHead - 8;
    for (const auto& piece : m_pages[static_cast<std::size_t>(page)]) {
        painter.save();
        piece.paint(painter, QRectF(kMargin, y, m_size.width() - 2 * kMargin, piece.height));
        painter.restore();
        y += piece.height;
    }
    painter.restore();
}

}  // namespace groundcount::paper
