using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>
/// Permission for a run to go on with nobody there: only for kinds of machine on the allow-list
/// (<see cref="RunningAlone"/>), and always with the caution.
/// </summary>
internal static class RunsLeftAlone
{
    public static IEnumerable<WhatIfIdea> Of(EpisodeChain chain) => chain.Stages
        .Where(stage => stage is { Kind: StageKind.Run, Begun: false })
        .Select(stage => Idea(chain.Workshop, stage))
        .OfType<WhatIfIdea>()
        .DistinctBy(idea => idea.Says);

    private static WhatIfIdea? Idea(Workshop workshop, PlannedStage stage)
    {
        var task = workshop.Tasks.Find(stage.Key.Task)!;
        var machine = stage.Parts.SelectMany(part => part.Stations).Select(workshop.Machines.Find).OfType<Machine>().FirstOrDefault();
        if (machine is null || !RunningAlone.CanBeAllowed(machine.Kind) || (machine.MayRunAlone && task.MayRunAlone))
        {
            return null;
        }

        return new WhatIfIdea(
            WhatIfKind.RunsAlone,
            $"“{task.Name}” may run on “{machine.Name}” with nobody there",
            new Batch([
                new MachineChange(machine.Id, machine with { MayRunAlone = true }),
                new TaskChange(task.Id, task with { MayRunAlone = true }),
            ]))
        {
            Cautions = [Cautions.ForRunningAlone(machine.Kind)],
        };
    }
}
