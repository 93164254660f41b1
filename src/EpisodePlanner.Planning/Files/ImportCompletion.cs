using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>Chooses the ids inside things that a hand-written file leaves out: of milestones, stages and shots.</summary>
internal static class ImportCompletion
{
    /// <summary>The workshop with an id for every milestone, unique among all, and for every part of every task.</summary>
    public static Workshop Complete(Workshop workshop) => workshop with
    {
        Series = CompleteMilestones(workshop.Series),
        Tasks = Each(workshop.Tasks, CompleteParts),
    };

    /// <summary>A thing read on its own, with an id for each of its parts.</summary>
    public static T CompleteParts<T>(T thing)
        where T : class => thing is WorkTask task ? (T)(object)CompleteParts(task) : thing;

    /// <summary>A thing read on its own, as it can join a workshop: with its id, and one for each of its parts.</summary>
    public static T Complete<T>(T thing, Id id, Workshop workshop)
        where T : class, IThing
    {
        var named = WithId(thing, id);
        return named is Series series ? (T)(object)CompleteMilestones(series, workshop) : CompleteParts(named);
    }

    /// <summary>A thing with this id, where it has none.</summary>
    public static T WithId<T>(T thing, Id id)
        where T : class, IThing => thing.Id.IsEmpty ? ShapeFactory.Record<T>().With(thing, "id", id) : thing;

    private static Series CompleteMilestones(Series series, Workshop workshop)
    {
        var taken = workshop.Series.Where(other => other.Id != series.Id).SelectMany(other => other.Milestones);
        return series with { Milestones = Complete(series.Milestones, taken.Select(milestone => milestone.Id)) };
    }

    private static WorkTask CompleteParts(WorkTask task)
    {
        var stages = Complete(task.Stages, []);
        var shots = Complete(task.Shots, []);
        return ReferenceEquals(stages, task.Stages) && ReferenceEquals(shots, task.Shots)
            ? task
            : task with { Stages = stages, Shots = shots };
    }

    private static Keyed<Series> CompleteMilestones(Keyed<Series> all)
    {
        var taken = all.SelectMany(series => series.Milestones).Select(milestone => milestone.Id).ToHashSet();
        return Each(all, series =>
        {
            var milestones = Complete(series.Milestones, taken);
            taken.UnionWith(milestones.Select(milestone => milestone.Id));
            return ReferenceEquals(milestones, series.Milestones) ? series : series with { Milestones = milestones };
        });
    }

    private static Keyed<T> Each<T>(Keyed<T> things, Func<T, T> complete)
        where T : class, IThing
    {
        var completed = things.Select(complete).ToList();
        return completed.SequenceEqual(things, ReferenceEqualityComparer.Instance) ? things : completed.ToKeyed();
    }

    private static ValueList<T> Complete<T>(ValueList<T> things, IEnumerable<Id> taken)
        where T : class, IThing => things.Any(thing => thing.Id.IsEmpty)
            ? Naming.Complete([.. things], ShapeFactory.Record<T>(), taken).ToValueList()
            : things;
}
