using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing.Tests;

/// <summary>Whatever people typed, the page keeps its own structure.</summary>
public sealed class InjectionTests
{
    private const string Nasty = "x\n\n# y\n\n- z | `a` <b>c</b> [d](e) **f**\r\n> g";

    [Fact]
    public void Outline_NastyNames_KeepTheStructureOfThePage() => AssertSameStructure(plan =>
        Assert.IsType<Written>(Outline.Write(plan, SamplePlan.Brakes)).Markdown);

    [Fact]
    public void Letter_NastyNames_KeepTheStructureOfThePage() => AssertSameStructure(plan => Letter.Write(plan).Markdown);

    private static void AssertSameStructure(Func<Plan, string> write)
    {
        var plain = write(Named("plain"));
        var nasty = write(Named(Nasty));
        Assert.Contains("x # y - z", nasty, StringComparison.Ordinal);
        Assert.Equal(plain.Split('\n').Select(Mark), nasty.Split('\n').Select(Mark));
        Assert.DoesNotContain("<b", nasty.Replace("\\<", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    /// <summary>What opens a line: heading, item, quote, text or nothing.</summary>
    private static string Mark(string line) => line.Length == 0 ? "" : line.TrimStart()[0] switch
    {
        '#' or '-' or '>' => line[..(line.IndexOf(' ', StringComparison.Ordinal) + 1)],
        _ => "text",
    };

    private static Plan Named(string name)
    {
        var plan = SamplePlan.Build().With(workshop => Named(workshop, name));
        return plan with
        {
            Episodes = plan.Episodes.Select(episode => episode with { Title = name }).ToValueList(),
            Series = plan.Series.Select(outlook => outlook with { Name = name }).ToValueList(),
            Stages = plan.Stages.Select(stage => stage with { Name = name }).ToValueList(),
        };
    }

    private static Workshop Named(Workshop workshop, string name) => workshop with
    {
        Name = name,
        Machines = workshop.Machines.Select(machine => machine with { Name = name }).ToKeyed(),
        Series = workshop.Series.Select(series => Named(series, name)).ToKeyed(),
        Tasks = workshop.Tasks.Select(task => Named(task, name)).ToKeyed(),
        Log = workshop.Log.Select(entry => entry with { Note = name.Replace('\n', ' ').Replace('\r', ' ') }).ToKeyed(),
        Uploads = workshop.Uploads.Select(upload => upload with { Title = name }).ToKeyed(),
        ToldDates = workshop.ToldDates.Select(told => told with { To = name }).ToKeyed(),
        TimedLines = workshop.TimedLines.Select(line => line with { Text = name }).ToKeyed(),
    };

    private static Series Named(Series series, string name) => series with
    {
        Name = name,
        Milestones = series.Milestones.Select(milestone => milestone with { Name = name }).ToValueList(),
    };

    private static WorkTask Named(WorkTask task, string name) => task with
    {
        Name = name,
        Shots = task.Shots.Select(shot => shot with { Name = name }).ToValueList(),
        Stages = task.Stages.Select(stage => stage with { Name = name }).ToValueList(),
    };
}
