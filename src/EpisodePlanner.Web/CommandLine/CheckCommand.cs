using System.CommandLine;
using EpisodePlanner.Web.CommandLine.Text;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"check": whether a file is a sound workshop in which everything can be done.</summary>
internal static class CheckCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var file = CommonParts.File();
        var command = new Command(
            "check",
            "Says everything that is wrong in a workshop file at once, with its place and what would be right; or what "
            + "the file holds, where it is sound.\n\nExample: check demo-seed/harbour-shed.json")
        {
            file,
        };
        command.SetAction((result, stop) => Task.FromResult(Run(result.GetValue(file)!, surroundings, stop)));
        return command;
    }

    private static int Run(string file, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, null, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var plan = PlanMaking.Plan(opened, surroundings, stop);
        var impossible = Impossible.In(plan);
        if (impossible.Count > 0)
        {
            return Complaints.About(file, impossible, surroundings);
        }

        CheckText.Write(file, plan, TextPage.On(surroundings));
        return ExitCode.Done;
    }
}
