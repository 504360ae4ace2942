#pragma once

#include "view/kit_form.h"
#include "view/row_list.h"

namespace groundcount::view {

/// A new lift of a lot (the subject): its number, the next one offered, and its thickness.
class LiftSheet : public groundcount::view::KitForm {  // written out: the type registrar finds a base by its full name
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString number READ numberText NOTIFY changed)
    Q_PROPERTY(QString thickness READ thickness NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* lifts READ lifts CONSTANT)

public:
    explicit LiftSheet(QObject* parent = nullptr) : KitForm(parent) {}

    QString numberText() const { return has("number") ? typed("number") : QString::number(next()); }
    QString thickness() const { return typed("thickness"); }
    RowList* lifts() { return &m_lifts; }
    Q_INVOKABLE void typeLift();

protected:
    const char* draftName() const override { return "lift"; }
    void refresh() override;
    Result<std::vector<book::Entry>> entries() const override;

private:
    std::vector<book::LiftRow> known() const;
    int next() const;

    RowList m_lifts;
};

}  // namespace groundcount::view
