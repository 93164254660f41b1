using EpisodePlanner.Data.PostgreSql.Tests;

[assembly: AssemblyFixture(typeof(PostgreSqlStores))]
