#pragma once

namespace ladlework::store {

/// What a workbook is opened for.
enum class Opening {
    ToWrite, ///< mends it, brings it up to date and keeps other windows from writing, if it may
    ToRead,  ///< touches neither the file nor anything beside it
};

} // namespace ladlework::store
