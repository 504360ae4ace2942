#include "book/kinds.h"

namespace groundcount::book {

const KindShape* kindShape(std::string_view kind)
{
    for (const auto family : {setupKinds(), groundKinds(), testKinds()})
        for (const KindShape& shape : family)
            if (kind == shape.kind)
                return &shape;
    return nullptr;
}

Result<void> checkBody(std::string_view kind, const Body& body)
{
    if (!body.is_object())
        return refused(std::string(kind) + ": the body must be an object; it is " + shown(body) + ".");
    const KindShape* shape = kindShape(kind);
    if (!shape)
        return {};
    if (auto keys = checkShape(body, shape->keys, std::string(kind) + ": "); !keys)
        return keys;
    return shape->across ? shape->across(body) : Result<void>{};
}

std::string textAt(const Body& body, const std::string& key)
{
    const auto it = body.find(key);
    return it != body.end() && it->is_string() ? *it->get_ptr<const std::string*>() : std::string();
}

WithUnit withUnit(const Body& body, const std::string& stem, Unit family)
{
    for (const std::string ending : endings(family))
        if (const auto it = body.find(stem + ending); it != body.end() && it->is_string())
            return {*it->get_ptr<const std::string*>(), ending.empty() ? ending : ending.substr(1)};
    return {};
}

}  // namespace groundcount::book
