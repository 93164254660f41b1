using EpisodePlanner.Data.Tests;

namespace EpisodePlanner.Data.Sqlite.Tests;

public sealed class SqliteBasicsTests(SqliteStores stores) : BasicsSuite(stores);
