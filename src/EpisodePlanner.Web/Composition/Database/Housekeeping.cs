using EpisodePlanner.Data;

namespace EpisodePlanner.Web.Composition;

/// <summary>Forgets once a day what was deleted long enough ago.</summary>
internal sealed partial class Housekeeping(
    WorkshopStore store, Preparation preparation, TimeProvider clock, ILogger<Housekeeping> log) : BackgroundService
{
    private static readonly TimeSpan Day = TimeSpan.FromDays(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await preparation.FirstTry.WaitAsync(stoppingToken);
            using var timer = new PeriodicTimer(Day, clock);
            do
            {
                await Purge(stoppingToken);
            }
            while (await timer.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException)
        {
            // The server stops.
        }
    }

    private async Task Purge(CancellationToken stop)
    {
        try
        {
            var count = await store.Purge(stop);
            LogPurged(count);
        }
        catch (StorageTroubleException trouble)
        {
            // The next day will do.
            LogPutOff(trouble.Message);
        }
    }

    [LoggerMessage(Level = LogLevel.Debug, Message = "Forgot {Count} rows of what was deleted long ago.")]
    private partial void LogPurged(int count);

    [LoggerMessage(Level = LogLevel.Debug, Message = "Put off forgetting what was deleted: {Says}")]
    private partial void LogPutOff(string says);
}
