using EpisodePlanner.Data.Tests;

namespace EpisodePlanner.Data.Sqlite.Tests;

public sealed class SqliteBasicsTests(SqliteStores stores) : BasicsSuite(stores);

public sealed class SqliteUndoTests(SqliteStores stores) : UndoSuite(stores);

public sealed class SqliteDeletingTests(SqliteStores stores) : DeletingSuite(stores);

public sealed class SqliteExpectationTests(SqliteStores stores) : ExpectationSuite(stores);

public sealed class SqliteRequestKeyTests(SqliteStores stores) : RequestKeySuite(stores);

public sealed class SqliteSupposeTests(SqliteStores stores) : SupposeSuite(stores);

public sealed class SqliteMemoryTests(SqliteStores stores) : MemorySuite(stores);

public sealed class SqliteAtomicTests(SqliteStores stores) : AtomicSuite(stores);

public sealed class SqliteParallelTests(SqliteStores stores) : ParallelSuite(stores);

public sealed class SqliteModelTests(SqliteStores stores) : ModelSuite(stores);
