using EpisodePlanner.Data.Tests;

namespace EpisodePlanner.Data.PostgreSql.Tests;

public sealed class PostgreSqlBasicsTests(PostgreSqlStores stores) : BasicsSuite(stores);

public sealed class PostgreSqlUndoTests(PostgreSqlStores stores) : UndoSuite(stores);

public sealed class PostgreSqlDeletingTests(PostgreSqlStores stores) : DeletingSuite(stores);

public sealed class PostgreSqlExpectationTests(PostgreSqlStores stores) : ExpectationSuite(stores);

public sealed class PostgreSqlRequestKeyTests(PostgreSqlStores stores) : RequestKeySuite(stores);

public sealed class PostgreSqlSupposeTests(PostgreSqlStores stores) : SupposeSuite(stores);

public sealed class PostgreSqlMemoryTests(PostgreSqlStores stores) : MemorySuite(stores);

public sealed class PostgreSqlAtomicTests(PostgreSqlStores stores) : AtomicSuite(stores);

public sealed class PostgreSqlParallelTests(PostgreSqlStores stores) : ParallelSuite(stores);

public sealed class PostgreSqlModelTests(PostgreSqlStores stores) : ModelSuite(stores);
