#pragma once
// The house's ledger for the screens: read from the journal on a thread of its own, again whenever something was
// entered. Until it is there for the first time there is none.
#include "core/ledger/touched.h"
#include "core/shift/house_ledger.h"
#include "core/shift/session.h"
#include "ui/ledger/book_form.h"

#include <QObject>
#include <filesystem>
#include <memory>
#include <thread>

namespace panside {

class House : public QObject {
    Q_OBJECT
public:
    // `journal` empty: a rehearsal, whose rows are in memory.
    House(Session& session, std::filesystem::path journal, QObject* parent = nullptr);
    ~House() override;

    // None until it was read; it stays as it is for whoever holds it.
    std::shared_ptr<const HouseLedger> ledger() const { return ledger_; }
    // Reads it if anything may have changed since; changed() follows. Quick: the reading is not waited for.
    void ask();
    // Something was entered or taken back: read again, if anybody ever asked.
    void touched();
    // Holds all that was entered so far.
    bool isFresh() const;
    // Nothing is being read: for tests and for what must be up to date.
    void wait();
    // Why it could not be read; none when it was.
    const std::optional<JournalError>& trouble() const { return trouble_; }

    // What the ledger would find odd if this row were kept.
    std::vector<LedgerMark> marksOf(const Fact& fact) const;
    std::shared_ptr<const BookContext> context(Units units) const;
    Instant now() const { return session_.now(); }

signals:
    void changed();
    // Lots that rest on an entry that was taken back or put right.
    void touchedLots(const std::vector<panside::TouchedLot>& lots);

private:
    std::vector<Fact> inMemory() const;
    void read();
    void hold(std::shared_ptr<const HouseLedger> ledger, std::optional<JournalError> trouble, long long told);
    void tellTouched(const HouseLedger& before, const HouseLedger& after);

    Session& session_;
    std::filesystem::path place_;
    std::shared_ptr<HouseReader> reader_ = std::make_shared<HouseReader>();
    std::shared_ptr<const HouseLedger> ledger_;
    std::optional<JournalError> trouble_;
    std::vector<Fact> takenBack_; // that the ledger at hand still has
    long long told_ = -1;         // what the session had been told when it was read
    bool reading_ = false, again_ = false;
    std::jthread worker_; // last: it stops before anything else goes
};

} // namespace panside
