using EpisodePlanner.Planning;
using EpisodePlanner.Writing;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>What the commands that write Markdown share.</summary>
internal static class WritingCommand
{
    public static int Run(
        string file, Instant? now, Func<Plan, WriteResult> write, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, now, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var plan = PlanMaking.Plan(opened, surroundings, stop);
        return write(plan) switch
        {
            Written written => Print(written.Markdown, surroundings),
            NotWritten refused => Complaints.About(file, refused.Reasons, surroundings),
            _ => throw new InvalidOperationException("Neither written nor refused."),
        };
    }

    private static int Print(string markdown, Surroundings surroundings)
    {
        surroundings.Output.Write(markdown);
        return ExitCode.Done;
    }
}
