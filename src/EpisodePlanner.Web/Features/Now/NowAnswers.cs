using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Web.Pages;
using EpisodePlanner.Web.Telling;

namespace EpisodePlanner.Web.Features.Now;

/// <summary>The answers that stand on the first page of a workshop.</summary>
public sealed record NowAnswers
{
    /// <summary>The next upload in a line, or why there is none.</summary>
    public required string UploadSays { get; init; }

    /// <summary>Why it goes out then.</summary>
    public required ValueList<string> UploadReasons { get; init; }

    /// <summary>What hands have begun and not finished, with when they began.</summary>
    public required ValueList<(PlannedStage Stage, string Says)> InHand { get; init; }

    /// <summary>Runs and waits that go on meanwhile.</summary>
    public required ValueList<(PlannedStage Stage, string Says)> ByItself { get; init; }

    /// <summary>The one thing for hands.</summary>
    public required Answer NextThing { get; init; }

    /// <summary>What must start tonight.</summary>
    public required Answer Tonight { get; init; }

    /// <summary>What to mind with what starts tonight, beside what is said with the next thing.</summary>
    public required ValueList<Caution> TonightCautions { get; init; }

    /// <summary>What must be filmed first.</summary>
    public required Answer FilmFirst { get; init; }

    /// <summary>What moved against the accepted plan; null where nothing did.</summary>
    public required Answer? Moved { get; init; }

    /// <summary>The silences beyond a promise.</summary>
    public required Answer Silences { get; init; }

    /// <summary>The one question of this visit.</summary>
    public required OneQuestion? Question { get; init; }

    /// <summary>The answers of a plan.</summary>
    public static NowAnswers Of(DeskView view)
    {
        var (plan, names) = (view.Plan, new PlanNames(view.Plan));
        var upload = First(sheet => NextUploadText.Write(sheet, plan, names, new ChainText(sheet, plan)))!.Paragraphs[0];
        var next = view.Advice.Next is { } thing ? Cautions.For(thing.Stage, view.Workshop) : [];
        return new NowAnswers
        {
            UploadSays = plan.NextUpload is { } to ? $"The next upload: {names.Full(to)}" : upload.Text,
            UploadReasons = upload.Below,
            InHand = Begun(plan, names, stage => stage.Kind == StageKind.Attended),
            ByItself = Begun(plan, names, stage => stage.Kind != StageKind.Attended),
            NextThing = First(sheet => NextThingText.Write(sheet, plan, view.Advice.Next, names, withCautions: false))!,
            Tonight = First(sheet => WriteTonight(sheet, view, names))!,
            TonightCautions = TonightText.Cautions(plan, Tonights(view)).Except(next).ToValueList(),
            FilmFirst = First(sheet => FilmText.Write(sheet, view.Advice.FilmFirst, names))!,
            Moved = First(sheet => MovedText.Write(sheet, plan, view.Advice.Moved, names)),
            Silences = First(sheet => SilenceText.Write(sheet, view.Advice, names, new ChainText(sheet, plan)))!,
            Question = OneQuestion.Of(view),
        };
    }

    /// <summary>The runs of tonight; where it is not known yet what they move, those that are planned.</summary>
    private static ValueList<RunTonight> Tonights(DeskView view) =>
        view.Advice.IsWeighed ? view.Advice.Tonight : RunsTonight.Planned(view.Plan);

    private static void WriteTonight(ISheet sheet, DeskView view, PlanNames names)
    {
        if (view.Advice.IsWeighed)
        {
            TonightText.Write(sheet, view.Plan, view.Advice.Tonight, names, withCautions: false);
        }
        else
        {
            TonightText.WritePlanned(sheet, Tonights(view), names);
        }
    }

    private static ValueList<(PlannedStage Stage, string Says)> Begun(Plan plan, PlanNames names, Func<PlannedStage, bool> which) =>
        plan.Stages.Where(stage => stage.Begun && which(stage)).Select(stage => (stage, Began(plan, stage, names))).ToValueList();

    private static string Began(Plan plan, PlannedStage stage, PlanNames names)
    {
        var since = TapLog.BegunAt(plan.Request.Workshop, stage.Key, plan.Request.PlannedAt);
        var began = since is { } moment ? $", began {names.Moment(moment)}" : "";
        var ends = stage.Finish is { } finish ? $"; finished {names.Moment(finish)} by plan" : "";
        return $"\u201c{stage.Name}\u201d{began}{ends}";
    }

    private static Answer? First(Action<ISheet> write) => AnswerSheet.Of(write) is [var first, ..] ? first : null;
}

/// <summary>The question whose answer would move the next upload most.</summary>
/// <param name="Ask">The question.</param>
/// <param name="Says">What is assumed until it is answered.</param>
/// <param name="Answer">How far another answer was seen to move the next upload.</param>
/// <param name="Path">The page on which it is answered.</param>
public sealed record OneQuestion(string Ask, string Says, string Answer, string Path)
{
    /// <summary>The question of a plan; null where nothing that matters was assumed.</summary>
    public static OneQuestion? Of(DeskView view) => AssumptionRanking.Question(view.Advice.Assumed) is { } assumed
        ? new OneQuestion(
            assumed.Ask,
            $"{SilenceWords.Capital(assumed.Says)} (assumed).",
            $"{SilenceWords.Capital(AssumedText.Measure(assumed))}.",
            Places.Of(assumed.Where, view.Paths))
        : null;
}
