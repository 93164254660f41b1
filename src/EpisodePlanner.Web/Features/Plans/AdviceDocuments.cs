using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>What follows from a plan, in a document.</summary>
internal sealed class AdviceDocuments(Plan plan, DocumentValues values, WorkDocuments work)
{
    public NextEntry? Next(NextThing? thing) => thing is null ? null : new NextEntry(
        DocumentValues.Key(thing.Stage.Key),
        thing.Stage.Name,
        DocumentValues.Word(thing.Part.Kind),
        values.Moment(thing.Part.Start),
        (int)(thing.Part.End - thing.Part.Start).TotalMinutes,
        [.. thing.Part.Stations.Select(id => $"{id}")]);

    public TonightEntry Tonight(RunTonight run) => new(
        DocumentValues.Key(run.Stage.Key),
        run.Stage.Name,
        values.Moment(run.Stage.Start!.Value),
        run.Stage.RunsAlone,
        run.Must,
        DocumentValues.Day(run.PutOffTo),
        [.. run.Moves.Select(Move)],
        [.. Cautions.For(run.Stage, plan.Request.Workshop).Select(c => new CautionEntry(c.Topic, c.Text, c.Source, c.Defers))]);

    public ShotEntry Shot(ShotToFilm shot) => new(
        $"{shot.Task.Id}",
        $"{shot.Shot.Id}",
        shot.Shot.Name,
        DocumentValues.Word(shot.Shot.Moment),
        shot.Shot.OnceOnly,
        shot.Shot.Required,
        shot.Shot.Minutes,
        values.Moment(shot.From),
        values.Moment(shot.Until),
        DocumentValues.Name(shot.LostBy?.Id),
        shot.Planned is { } planned ? work.Entry(planned) : null,
        shot.Passed);

    public MovedEntry Moved(MovedStart moved) => new(
        DocumentValues.Key(moved.Stage.Key), moved.Stage.Name, values.Moment(moved.Accepted), values.Moment(moved.Stage.Start), moved.Because);

    private MoveEntry Move(MovedUpload move) =>
        new($"{move.Episode.Id}", values.Moment(move.Episode.Publish!.Value), values.Moment(move.To));
}
