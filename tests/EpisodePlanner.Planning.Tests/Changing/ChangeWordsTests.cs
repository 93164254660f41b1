using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class ChangeWordsTests
{
    private static readonly WorkTask Sweep = Sound.Tasks.Find(Id("sweep"))!;

    [Fact]
    public void Say_TheWhole()
    {
        Says("Renamed the workshop to \u201cShed\u201d", new NameChange("Shed"));
        Says("Moved the workshop to the time zone UTC", new ZoneChange("UTC"));
        Says("Changed the settings", new SettingsChange(new Settings()));
        Says("Accepted a plan", new AcceptedPlanChange(Sound.Accepted));
        Says("Let go of the accepted plan", new AcceptedPlanChange(null));
    }

    [Fact]
    public void Say_AThing()
    {
        var bob = new Person { Id = Id("bob"), Name = "Bob" };

        Says("Added person \u201cBob\u201d", new PersonChange(bob.Id, bob));
        Says($"Changed task \u201c{Sweep.Name}\u201d", new TaskChange(Sweep.Id, Sweep with { Note = "twice" }));
        Says($"Renamed task \u201c{Sweep.Name}\u201d to \u201cBroom\u201d", new TaskChange(Sweep.Id, Sweep with { Name = "Broom" }));
        Says($"Removed task \u201c{Sweep.Name}\u201d", new TaskChange(Sweep.Id, null));
        Says("Removed task 'ghost'", new TaskChange(Id("ghost"), null));
    }

    [Fact]
    public void Say_ALongName_IsCut()
    {
        var said = ChangeWords.Say(new NameChange(new string('n', 200)), Sound);

        Assert.Equal($"Renamed the workshop to \u201c{new string('n', 79)}\u2026\u201d", said);
    }

    [Fact]
    public void Say_ABatch_NamesTheFirstThree()
    {
        Says("Changed nothing", new Batch([]));
        Says(
            "Renamed the workshop to \u201cShed\u201d; changed the settings; accepted a plan; and 2 more",
            new Batch(
                [
                    new NameChange("Shed"),
                    new Batch([new SettingsChange(new Settings()), new AcceptedPlanChange(Sound.Accepted)]),
                    new ZoneChange("UTC"),
                    new TaskChange(Sweep.Id, null),
                ]));
    }

    [Fact]
    public void Say_EveryKind_IsASentenceOfItsOwn() => Assert.All(
        EveryKind.Of(Sound), change => Assert.Matches("^[A-Z][^\n]*[^.]$", ChangeWords.Say(change, Sound)));

    private static void Says(string expected, Change change) => Assert.Equal(expected, ChangeWords.Say(change, Sound));
}
