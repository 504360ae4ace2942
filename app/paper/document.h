#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>

#include <functional>
#include <utility>
#include <variant>
#include <vector>

class QPainter;

/// What a sheet says, before it is laid out: figures and words are final text here.
namespace groundcount::paper {

struct Heading {
    QString text;
};

/// Label over value, several beside each other. A value may be empty: a blank to fill in by hand.
struct Facts {
    std::vector<std::pair<QString, QString>> pairs;
    int across = 4;
};

enum class Align { Left, Right };

struct Column {
    QString title;
    double share = 1;  ///< of the width, against the other columns
    Align align = Align::Left;
};

/// Rows of a table; the head is repeated on every page. An empty table says so in `none`.
struct Table {
    std::vector<Column> columns;
    std::vector<QStringList> rows;
    QString none;
};

struct Paragraph {
    QString text;
};

/// A drawing of a fixed height in points, in the colours of paper.
struct Drawing {
    double height = 0;
    std::function<void(QPainter&, const QRectF&)> paint;
};

/// Lines to sign on, one for each role; a date beside each.
struct Signatures {
    QStringList roles;
};

using Block = std::variant<Heading, Facts, Table, Paragraph, Drawing, Signatures>;

/// A sheet. `code` is the record hash that stands on every page as text and as a QR code, so that a printed sheet can be
/// checked against the book (groundbook sheet BOOK code CODE).
struct Document {
    QString title, subtitle;
    QString job, book;
    QString made;  ///< when and by what it was made
    QString code;  ///< 64 hex digits, or empty
    std::vector<Block> blocks;
};

}  // namespace groundcount::paper
