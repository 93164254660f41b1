using EpisodePlanner.Databases.Folders;

namespace EpisodePlanner.Databases;

/// <summary>SQLite files, each in a temporary folder of its own.</summary>
public sealed class SqliteDatabases : ITestDatabases
{
    private const string Purpose = "sqlite";
    private static readonly Lazy<Task> Swept = new(Sweep);

    /// <inheritdoc/>
    public DatabaseKind Kind => DatabaseKind.Sqlite;

    /// <inheritdoc/>
    public async ValueTask<ITestDatabase> New()
    {
        await Swept.Value;
        return new SqliteDatabase(TemporaryFolder.Create(Purpose));
    }

    /// <summary>Removes what runs that crashed have left; the first database asks for it.</summary>
    public static Task Sweep() => TemporaryFolder.Sweep(Purpose, _ => Task.CompletedTask);

    private sealed class SqliteDatabase(TemporaryFolder folder) : ITestDatabase
    {
        private const string FileName = "episode-planner.db";

        public DatabaseKind Kind => DatabaseKind.Sqlite;

        public string Folder => folder.Path;

        public string ConnectionString => $"Data Source={Path.Combine(Folder, FileName)}";

        public ValueTask<ITestDatabase> Copy()
        {
            var other = TemporaryFolder.Create(Purpose);
            // The index of the journal, which connections share in memory, is made anew.
            foreach (var name in new[] { FileName, $"{FileName}-wal" })
            {
                var file = Path.Combine(Folder, name);
                if (File.Exists(file))
                {
                    File.Copy(file, Path.Combine(other.Path, name));
                }
            }

            return ValueTask.FromResult<ITestDatabase>(new SqliteDatabase(other));
        }

        public ValueTask DisposeAsync()
        {
            folder.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
