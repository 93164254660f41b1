using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing.Tests;

/// <summary>Take any fact away: exactly the sentences that name it go, and at most as many others come in their place.</summary>
public sealed class DeletedFactTests
{
    public static TheoryData<string> Facts => [.. Deletions.All(SamplePlan.Build()).Keys.Select(fact => $"{fact.Kind} {fact.Name}")];

    [Theory, MemberData(nameof(Facts))]
    public void Outline_WithoutAFact_LosesItsSentencesOnly(string fact) => AssertOnlyItsSentencesGo(fact, OutlineOf);

    [Theory, MemberData(nameof(Facts))]
    public void Letter_WithoutAFact_LosesItsSentencesOnly(string fact) => AssertOnlyItsSentencesGo(fact, LetterOf);

    [Fact]
    public void Pages_EveryKindOfFact_IsNamedSomewhere()
    {
        var plan = SamplePlan.Build();
        var named = OutlineOf(plan).Concat(LetterOf(plan)).SelectMany(sentence => sentence.From).ToHashSet();
        var untold = Deletions.All(plan).Keys.Where(fact => !named.Contains(fact)).Select(fact => fact.Name);

        // A log entry later than the plan is told nowhere.
        Assert.Equal(["l9"], untold);
    }

    private static List<Sentence> OutlineOf(Plan plan) =>
        [.. Assert.IsType<Written>(Outline.Write(plan, SamplePlan.Brakes)).Page.Sentences];

    private static List<Sentence> LetterOf(Plan plan) => [.. Letter.Write(plan).Page.Sentences];

    private static void AssertOnlyItsSentencesGo(string name, Func<Plan, List<Sentence>> write)
    {
        var plan = SamplePlan.Build();
        var (fact, delete) = Deletions.All(plan).Single(pair => $"{pair.Key.Kind} {pair.Key.Name}" == name);
        var before = write(plan);
        var after = write(delete(plan));
        var gone = before.Where(sentence => sentence.From.Contains(fact)).ToList();

        foreach (var text in before.Where(sentence => sentence.From.Count > 0).Select(sentence => sentence.Text).Distinct())
        {
            Assert.Equal((text, Count(before, text) - Count(gone, text)), (text, Count(after, text)));
        }

        var come = after.Where(sentence => sentence.From.Count > 0 && Count(before, sentence.Text) == 0);
        Assert.True(come.Count() <= gone.Count);
    }

    private static int Count(IEnumerable<Sentence> sentences, Markdown text) => sentences.Count(sentence => sentence.Text == text);
}
