#pragma once

#include "book/store.h"
#include "method/error.h"

#include <utility>

namespace groundcount::book {

/// While it lives everything read from the store is of one moment, whatever other programs and Stores commit meanwhile. Nothing may be
/// sealed through the same store.
class ReadView {
public:
    /// @param store must outlive it @error Unavailable when the book cannot be read.
    static Result<ReadView> begin(const Store& store);
    ReadView(ReadView&& other) noexcept : m_store(std::exchange(other.m_store, nullptr)) {}
    ReadView(const ReadView&) = delete;
    ReadView& operator=(const ReadView&) = delete;
    ReadView& operator=(ReadView&&) = delete;
    ~ReadView();

private:
    explicit ReadView(const Store& store) : m_store(&store) {}
    const Store* m_store;
};

}  // namespace groundcount::book
