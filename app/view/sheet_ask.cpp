#include "view/sheet_ask.h"

namespace groundcount::view {

void SheetAsk::open(About about, const QString& title, const QString& what, const QString& act)
{
    m_about = about;
    m_title = title;
    m_what = what;
    m_act = act;
    m_missing.clear();
    emit changed();
}

void SheetAsk::miss(const QString& sentence)
{
    m_missing = sentence;
    emit changed();
}

void SheetAsk::close()
{
    if (!isOpen())
        return;
    m_about = About::Nothing;
    emit changed();
}

}  // namespace groundcount::view
