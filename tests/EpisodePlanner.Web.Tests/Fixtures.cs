using EpisodePlanner.Databases;
using EpisodePlanner.Web.Tests.Deploy;

[assembly: AssemblyFixture(typeof(PostgreSqlDatabases))]
[assembly: AssemblyFixture(typeof(SqliteDatabases))]
[assembly: AssemblyFixture(typeof(PublishedApp))]
