#pragma once

namespace ladlework::store {

class Database;

/// A transaction that is rolled back unless it is committed.
class Transaction {
public:
    enum class Kind {
        Read, ///< one view of the file over several queries; inside another transaction it is part
              ///< of that one
        Write ///< takes the right to write at once; never inside another one
    };

    Transaction(Database& database, Kind kind);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    /// Throws StoreError; then nothing of the transaction is kept.
    void commit();

private:
    Database& m_database;
    bool m_open = false;
};

} // namespace ladlework::store
