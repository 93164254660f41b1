using EpisodePlanner.Data.Tests;

namespace EpisodePlanner.Data.PostgreSql.Tests;

public sealed class PostgreSqlBasicsTests(PostgreSqlStores stores) : BasicsSuite(stores);
