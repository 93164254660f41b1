using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Sqlite;

/// <summary>Lets one process at a time migrate a file; the system takes the lock back from one that dies.</summary>
internal sealed class MigrationLock : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    private readonly FileStream held;

    private MigrationLock(FileStream held) => this.held = held;

    /// <summary>Waits for the lock.</summary>
    /// <exception cref="StorageTroubleException">Another process holds it for too long.</exception>
    public static async Task<MigrationLock> Take(string file, CancellationToken stop)
    {
        for (var tries = Longest / Pause; ; tries--)
        {
            try
            {
                return new MigrationLock(new FileStream(
                    file + ".migrating", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
            }
            catch (IOException taken) when (taken.GetType() == typeof(IOException))
            {
                if (tries <= 0)
                {
                    throw new StorageTroubleException(
                        StorageTrouble.Locked, "Another process is preparing the database; try again in a moment.", taken);
                }
            }

            await Task.Delay(Pause, stop);
        }
    }

    /// <summary>Removes the mark by which a migration that died would keep out all that follow.</summary>
    public async Task ClearWhatACrashLeft(PlannerContext context, CancellationToken stop)
    {
        ObjectDisposedException.ThrowIf(!held.CanWrite, this);
        const string tables = "SELECT count(*) AS Value FROM sqlite_master WHERE name = '__EFMigrationsLock'";
        if (await context.Database.SqlQueryRaw<int>(tables).SingleAsync(stop) > 0)
        {
            await context.Database.ExecuteSqlRawAsync("DELETE FROM __EFMigrationsLock", stop);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => held.Dispose();
}
