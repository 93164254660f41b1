using EpisodePlanner.Databases;

[assembly: AssemblyFixture(typeof(PostgreSqlDatabases))]
[assembly: AssemblyFixture(typeof(SqliteDatabases))]
