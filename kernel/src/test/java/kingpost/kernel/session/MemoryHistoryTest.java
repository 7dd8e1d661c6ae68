package kingpost.kernel.session;

class MemoryHistoryTest extends HistoryStoreContract {

    @Override
    HistoryStore open() {
        return new MemoryHistory();
    }
}
