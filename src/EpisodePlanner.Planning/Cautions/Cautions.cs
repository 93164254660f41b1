using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>What to mind where work can hurt. The sources are public; each caution names its own and what it defers to.</summary>
public static class Cautions
{
    /// <summary>What to mind at a kind of work; nothing for kinds that are done at a desk.</summary>
    public static ValueList<Caution> For(WorkKind kind) => CautionTables.ByWork.GetValueOrDefault(kind, []);

    /// <summary>What to mind at a kind of machine.</summary>
    public static ValueList<Caution> For(MachineKind kind) => CautionTables.ByMachine.GetValueOrDefault(kind, []);

    /// <summary>
    /// What to mind where a machine of this kind is given, or asked for, the permission to run with nobody there: the
    /// caution about that for kinds that can have it, "never alone" for all others.
    /// </summary>
    public static Caution ForRunningAlone(MachineKind kind) =>
        RunningAlone.CanBeAllowed(kind) ? LeftAlone.Unattended : LeftAlone.Never;

    /// <summary>What to mind at a task: its kind, the machines it may use, and its runs that may go on alone.</summary>
    public static ValueList<Caution> For(WorkTask task, Workshop workshop)
    {
        var cautions = task.Stages
            .SelectMany(stage => MachinesOf(stage, workshop).SelectMany(machine => AtMachine(task, stage, machine)));
        return For(task.Kind).Concat(cautions).Distinct().ToValueList();
    }

    /// <summary>
    /// What to mind at a planned stage: its kind of work, the machines it takes (those it may take while it has no
    /// date), and, first of all, that it goes on with nobody there.
    /// </summary>
    public static ValueList<Caution> For(PlannedStage stage, Workshop workshop)
    {
        var machines = MachinesOf(stage, workshop);
        return Alone(stage, machines)
            .Concat(For(stage.Work))
            .Concat(machines.SelectMany(machine => For(machine.Kind)))
            .Distinct()
            .ToValueList();
    }

    private static IEnumerable<Caution> AtMachine(WorkTask task, Stage stage, Machine machine)
    {
        var asked = stage.Kind == StageKind.Run && task.MayRunAlone;
        var granted = machine.MayRunAlone || !RunningAlone.CanBeAllowed(machine.Kind);
        return asked && granted ? For(machine.Kind).Append(ForRunningAlone(machine.Kind)) : For(machine.Kind);
    }

    private static IEnumerable<Caution> Alone(PlannedStage stage, IReadOnlyCollection<Machine> machines)
    {
        if (!stage.RunsAlone)
        {
            return [];
        }

        var never = machines.Any(machine => !RunningAlone.CanBeAllowed(machine.Kind));
        return [never ? LeftAlone.Never : LeftAlone.Unattended];
    }

    private static List<Machine> MachinesOf(PlannedStage planned, Workshop workshop)
    {
        if (planned.Parts.Count > 0)
        {
            return Named(planned.Parts.SelectMany(part => part.Stations), workshop);
        }

        var task = !planned.Key.IsTask ? null : workshop.Tasks.Find(planned.Key.Task);
        var stage = task?.Stages.FirstOrDefault(stage => stage.Id == planned.Key.Stage);
        return stage is null ? [] : MachinesOf(stage, workshop);
    }

    private static List<Machine> MachinesOf(Stage stage, Workshop workshop) =>
        Named(stage.Needs.SelectMany(choice => choice), workshop);

    private static List<Machine> Named(IEnumerable<Id> stations, Workshop workshop) =>
        [.. stations.Distinct().Select(workshop.Machines.Find).OfType<Machine>()];
}
