namespace EpisodePlanner.Planning.Files.WorkLines;

/// <summary>Turns the lines of work of every series into milestones and tasks.</summary>
internal static class WorkLineExpansion
{
    /// <summary>
    /// The workshop without lines: each became a milestone with a payoff and a task that leads to it and follows the
    /// line above or what it names. Lines that can't be understood go into <paramref name="reading"/>.
    /// </summary>
    public static Workshop Expand(Workshop workshop, Reading reading, Origins origins)
    {
        if (workshop.Series.All(series => series.Work.Count == 0))
        {
            return workshop;
        }

        var names = new WorkNames(
            new Names(workshop.Tasks.Select(task => task.Id)),
            new Names(workshop.Series.SelectMany(series => series.Milestones).Select(milestone => milestone.Id)));
        var printers = workshop.Machines.Where(machine => machine.Kind == MachineKind.Printer).ToList();
        var (tasks, series) = (workshop.Tasks.ToList(), new List<Series>());
        foreach (var each in workshop.Series)
        {
            var made = new SeriesLines(each, workshop.Tasks, names, reading, origins).Expand(printers);
            tasks.AddRange(made.Select(line => line.Task));
            series.Add(each with { Milestones = [.. each.Milestones, .. made.Select(line => line.Milestone)], Work = [] });
        }

        return workshop with { Tasks = tasks.ToKeyed(), Series = series.ToKeyed() };
    }
}

/// <summary>The ids in use, of tasks and of milestones.</summary>
internal sealed record WorkNames(Names Tasks, Names Milestones);

/// <summary>What one line became.</summary>
internal sealed record MadeLine(WorkLine Line, string Path, Milestone Milestone, WorkTask Task);
