using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Cadences;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"cadence": what can be kept up over all series.</summary>
internal static class CadenceCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var (file, loading, now, format) = (CommonParts.File(), Loading(), Moments.Option(), Formats.Option());
        var command = new Command(
            "cadence",
            "Says what can be kept up over all series: the highest rate of uploads that hands carry, whether all promises can "
            + "hold on the slots there are, which breaks first and what would hold, and what resting a series would do.\n\n"
            + "Example: cadence demo-seed/harbour-shed.json")
        {
            file,
            loading,
            now,
            format,
        };
        command.SetAction((result, stop) => Task.FromResult(Run(
            result.GetValue(file)!,
            result.GetValue(now),
            result.GetValue(loading),
            Formats.IsJson(result.GetValue(format)),
            surroundings,
            stop)));
        return command;
    }

    private static Option<int> Loading() => new("--loading")
    {
        HelpName = "PERCENT",
        Description = "How much of the kept hours may be loaded, 1 to 100",
        DefaultValueFactory = _ => (int)(Cadence.UsualLoading * 100),
        CustomParser = argument =>
        {
            var typed = argument.Tokens[0].Value;
            if (int.TryParse(typed, out var percent) && percent is >= 1 and <= 100)
            {
                return percent;
            }

            argument.AddError($"--loading: '{typed}' is no percentage; write a whole number from 1 to 100.");
            return 0;
        },
    };

    private static int Run(string file, Instant? now, int loading, bool asJson, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, now, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var cadence = Cadence.Of(PlanMaking.Plan(opened, surroundings, stop), loading / 100m);
        if (asJson)
        {
            DocumentJson.Write(CadenceDocuments.Of(cadence), surroundings.Output);
        }
        else
        {
            CadenceText.Write(TextPage.On(surroundings), cadence);
        }

        return ExitCode.Done;
    }
}
