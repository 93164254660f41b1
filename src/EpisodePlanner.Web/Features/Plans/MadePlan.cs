using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>A plan that was made, with what follows from it and its document, which are made when they are first asked for.</summary>
internal sealed class MadePlan
{
    private readonly SharedWork<PlanAdvice> quick;
    private readonly SharedWork<PlanAdvice> advice;
    private readonly SharedWork<ReadOnlyMemory<byte>> full;
    private readonly SharedWork<ReadOnlyMemory<byte>> dates;
    private readonly PlanBench bench;
    private readonly ConcurrentDictionary<object, object> answers = [];

    /// <summary>A plan.</summary>
    /// <param name="key">What it depends on.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="bench">Where further plans are made.</param>
    public MadePlan(PlanKey key, Plan plan, PlanBench bench)
    {
        (Key, Plan, Until, this.bench) = (key, plan, PlanValidity.Until(plan), bench);
        quick = new SharedWork<PlanAdvice>(stop => bench.Run(within => PlanAdvice.Of(plan, false, within), stop));
        advice = new SharedWork<PlanAdvice>(stop => bench.Run(within => PlanAdvice.Of(plan, true, within), stop));
        full = new SharedWork<ReadOnlyMemory<byte>>(async stop => DocumentJson.Write(new PlanDocuments(plan).Of(await advice.Get(stop))));
        dates = new SharedWork<ReadOnlyMemory<byte>>(async stop => DocumentJson.Write(new PlanDocuments(plan).Of(await quick.Get(stop))));
    }

    /// <summary>What it depends on.</summary>
    public PlanKey Key { get; }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>From when on a plan made anew may differ though nothing was changed.</summary>
    public Instant Until { get; }

    /// <summary>The plan and what follows from it without further plans.</summary>
    public Task<PlanAdvice> Quick(CancellationToken stop) => quick.Get(stop);

    /// <summary>
    /// The plan and what follows from it; where the further plans take longer than somebody is patient, without them.
    /// They are made to their end all the same, for who asks next, unless the plan is outdated by then.
    /// </summary>
    /// <param name="patience">How long to wait for them.</param>
    /// <param name="outdated">Ends them: nobody will ask for this plan again.</param>
    /// <param name="stop">Ends the waiting.</param>
    public async Task<PlanAdvice> Advice(TimeSpan patience, CancellationToken outdated, CancellationToken stop)
    {
        var whole = advice.Get(outdated);
        await Task.WhenAny(whole, Task.Delay(patience, stop));
        return whole.IsCompletedSuccessfully ? await whole : await Quick(stop);
    }

    /// <summary>The plan and what follows from it.</summary>
    public Task<PlanAdvice> Advice(CancellationToken stop) => advice.Get(stop);

    /// <summary>Why an episode of the plan goes out when it does; null where the plan has no such episode.</summary>
    public Task<EpisodeWhy?> Why(Id episode, CancellationToken stop) => Plan.Episodes.Any(e => e.Id == episode)
        ? Ask(("why", episode), within => EpisodeWhy.Of(Plan, episode, stop: within), stop)
        : Task.FromResult<EpisodeWhy?>(null);

    /// <summary>The cuts and slots of all series that together weigh least.</summary>
    public Task<StoryAnswer> Story(CancellationToken stop) => Ask("story", within => StoryAnswer.Of(Plan, stop: within), stop);

    /// <summary>Where one series could be cut; null where the plan has no such series.</summary>
    public Task<SeriesStory?> Story(Id series, CancellationToken stop) => Plan.Series.Any(outlook => outlook.Series == series)
        ? Ask(("story", series), within => SeriesStory.Of(Plan, series, stop: within), stop)
        : Task.FromResult<SeriesStory?>(null);

    /// <summary>What can be done about the silence of a series, or of the channel for an empty id; null where its promise holds.</summary>
    public Task<SilenceRemedies?> Remedies(Id series, CancellationToken stop)
    {
        var found = Found(series);
        return Ask(("silence", series), within => SilenceRemedies.Of(Plan, series, found: found, stop: within), stop);
    }

    /// <summary>The same; where it takes longer than somebody is patient, what was found by then.</summary>
    /// <param name="series">The series; the channel for an empty id.</param>
    /// <param name="patience">How long to wait.</param>
    /// <param name="outdated">Ends the trials: nobody will ask for this plan again.</param>
    /// <param name="stop">Ends the waiting.</param>
    public async Task<SilenceRemedies?> Remedies(Id series, TimeSpan patience, CancellationToken outdated, CancellationToken stop)
    {
        var whole = Remedies(series, outdated);
        await Task.WhenAny(whole, Task.Delay(patience, stop));
        return whole.IsCompletedSuccessfully ? await whole : SilenceRemedies.Partly(Plan, series, Found(series).SoFar);
    }

    /// <summary>Each way out of a silence that wins days, as soon as it is found, in no order; then no more.</summary>
    /// <param name="series">The series; the channel for an empty id.</param>
    /// <param name="stop">Ends the waiting.</param>
    public async IAsyncEnumerable<Remedy> Finding(Id series, [EnumeratorCancellation] CancellationToken stop)
    {
        var whole = Remedies(series, stop);
        var found = Found(series);
        for (var told = 0; ;)
        {
            // What waits for more is taken first, so that nothing is found between the two unseen.
            var more = found.More;
            var next = found.SoFar;
            for (; told < next.Count; told++)
            {
                yield return next[told];
            }

            if (whole.IsCompleted && told == found.SoFar.Count)
            {
                var all = await whole;
                foreach (var pair in all?.Helping.Where(remedy => remedy.Kind == RemedyKind.Pair) ?? [])
                {
                    yield return pair;
                }

                yield break;
            }

            await Task.WhenAny(whole, more);
        }
    }

    /// <summary>What would differ if a draft were kept; null where its changes don't fit the plan's workshop.</summary>
    public Task<PlanDifference?> Suppose(Suppose draft, CancellationToken stop) => Ask(
        ("suppose", draft.Id, draft.Version),
        within => Replanning.After(Plan, draft.Changes, within) is { } then ? new PlanDifference(Plan, then) : null,
        stop);

    /// <summary>What each series could publish now; a series that rests is left out.</summary>
    public Task<ValueList<PublishNow>> PublishNow(CancellationToken stop) => Ask(
        "publish now",
        within => Plan.Series.Select(outlook => Planning.PublishNow.Of(Plan, outlook.Series, within)).OfType<PublishNow>().ToValueList(),
        stop);

    /// <summary>What resting a series until a day would do, or finishing it where no day is given; null where neither can be.</summary>
    public Task<SeriesPause?> Pause(Id series, LocalDate? until, CancellationToken stop) =>
        Ask(("pause", series, until), within => SeriesPause.Of(Plan, series, until, within), stop);

    /// <summary>The plan as JSON.</summary>
    /// <param name="trials">With all its parts, or without those that need further plans.</param>
    /// <param name="stop">Ends the waiting.</param>
    public Task<ReadOnlyMemory<byte>> Document(bool trials, CancellationToken stop) => (trials ? full : dates).Get(stop);

    private FoundRemedies Found(Id series) => (FoundRemedies)answers.GetOrAdd(("found", series), _ => new FoundRemedies());

    /// <summary>An answer that takes further plans, made once for all who ask.</summary>
    private Task<T> Ask<T>(object question, Func<CancellationToken, T> answer, CancellationToken stop) =>
        ((SharedWork<T>)answers.GetOrAdd(question, _ => new SharedWork<T>(within => bench.Run(answer, within)))).Get(stop);
}
