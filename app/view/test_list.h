#pragma once

#include "view/row_list.h"
#include "view/session.h"

#include <QAbstractListModel>
#include <cstdint>
#include <vector>

namespace groundcount::view {

/// Tests of the session's rows by their places, formatted when they come into view: a million rows cost nothing until then.
/// Roles as RowList.
class TestList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Rows come from a view-model.")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    using QAbstractListModel::QAbstractListModel;
    int count() const { return static_cast<int>(m_places.size()); }
    /// @param places indexes into the tests of the session's snapshot
    void show(const Session* session, std::vector<std::uint32_t> places);
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();

private:
    const Session* m_session = nullptr;
    std::vector<std::uint32_t> m_places;
    mutable int m_formattedRow = -1;  ///< the roles of one row are asked for one after the other
    mutable Row m_formatted;
};

}  // namespace groundcount::view
