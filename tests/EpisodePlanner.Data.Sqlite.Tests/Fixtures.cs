using EpisodePlanner.Data.Sqlite.Tests;

[assembly: AssemblyFixture(typeof(SqliteStores))]
