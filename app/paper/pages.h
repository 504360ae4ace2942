#pragma once

#include "paper/document.h"

#include "method/error.h"

#include <QSizeF>

#include <vector>

class QPainter;

namespace groundcount::paper {

enum class Format { Letter, A4 };

/// Size of a page in points of 1/72 in.
QSizeF sizeOf(Format format);

/// A document laid out on pages. Painting works in points; the caller scales the painter for screen or printer, so that
/// both show the same.
class Pages {
public:
    Pages(const Document& document, Format format);

    int count() const { return static_cast<int>(m_pages.size()); }
    QSizeF size() const { return m_size; }
    /// @param page from 0
    void paint(QPainter& painter, int page) const;

private:
    struct Piece {
        double height = 0;
        std::function<void(QPainter&, const QRectF&)> paint;
    };
    void lay(const Document& document);
    void layTable(const Table& table);
    void layFacts(const Facts& facts);
    void layText(const QString& text);
    void layHeading(const QString& text, double follows);
    void laySignatures(const Signatures& signatures);
    void add(Piece piece);
    void paintFrame(QPainter& painter, int page) const;

    const Document m_document;
    QSizeF m_size;
    std::vector<std::vector<Piece>> m_pages;
    double m_used = 0;
};

/// Writes the pages as a PDF with embedded fonts; the file appears under `path` when it is whole.
/// @error Unavailable when the folder or the file cannot be written
Result<void> writePdf(const Document& document, Format format, const QString& path);

}  // namespace groundcount::paper
