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
        var tasksOf = TasksBySeries(workshop);
        var (tasks, series) = (workshop.Tasks.ToList(), new List<Series>());
        foreach (var each in workshop.Series)
        {
            var made = new SeriesLines(each, tasksOf[each.Id], names, reading, origins).Expand(printers);
            tasks.AddRange(made.Select(line => line.Task));
            var milestones = each.Milestones.Concat(made.Select(line => line.Milestone)).ToValueList();
            series.Add(each with { Milestones = milestones, Work = [] });
        }

        return workshop with { Tasks = tasks.ToKeyed(), Series = series.ToKeyed() };
    }

    private static ILookup<Id, WorkTask> TasksBySeries(Workshop workshop)
    {
        var homes = new Dictionary<Id, Id>();
        foreach (var series in workshop.Series)
        {
            foreach (var milestone in series.Milestones)
            {
                homes[milestone.Id] = series.Id;
            }
        }

        return workshop.Tasks.ToLookup(task => task.Milestone is { } milestone
            ? homes.GetValueOrDefault(milestone)
            : task.Series.GetValueOrDefault());
    }
}

/// <summary>The ids in use, of tasks and of milestones.</summary>
internal sealed record WorkNames(Names Tasks, Names Milestones);

/// <summary>What one line became.</summary>
internal sealed record MadeLine(WorkLine Line, string Path, Milestone Milestone, WorkTask Task);
