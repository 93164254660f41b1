using EpisodePlanner.Data;
using EpisodePlanner.Web.Features.Demo;
using EpisodePlanner.Web.Serving;

namespace EpisodePlanner.Web.Composition;

/// <summary>
/// Brings the database to this version's tables beside the running server, and tries again until it succeeds: whatever is
/// wrong with a database at the start, the server recovers when that is mended.
/// </summary>
internal sealed partial class Preparation(
    Storage storage, Readiness readiness, ServerSettings settings, DemoWorkshop demo, TimeProvider clock, ILogger<Preparation> log)
    : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2);
    private readonly TaskCompletionSource<StorageTroubleException?> firstTry = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>What the first try came to: null where the database is ready, else what is wrong with it.</summary>
    public Task<StorageTroubleException?> FirstTry => firstTry.Task;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await UntilReady(stoppingToken);
            firstTry.TrySetResult(null);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            firstTry.TrySetCanceled(stoppingToken);
        }
        catch (Exception e)
        {
            firstTry.TrySetException(e);
            throw;
        }
    }

    private async Task UntilReady(CancellationToken stop)
    {
        string? said = null;
        while (await Try(stop) is { } trouble)
        {
            if (trouble.Message != said)
            {
                said = trouble.Message;
                LogTrouble(trouble.Trouble, said);
            }

            readiness.Trouble = trouble;
            firstTry.TrySetResult(trouble);
            await Task.Delay(Pause, clock, stop);
        }

        readiness.Trouble = null;
        if (said is not null)
        {
            LogReady();
        }
    }

    private async Task<StorageTroubleException?> Try(CancellationToken stop)
    {
        try
        {
            await storage.Prepare(stop);
            if (settings.IsDemo)
            {
                await demo.Lay(stop);
            }

            return null;
        }
        catch (StorageTroubleException trouble)
        {
            return trouble;
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "The database is not ready ({Trouble}): {Says}")]
    private partial void LogTrouble(StorageTrouble trouble, string says);

    [LoggerMessage(Level = LogLevel.Information, Message = "The database is ready.")]
    private partial void LogReady();
}
