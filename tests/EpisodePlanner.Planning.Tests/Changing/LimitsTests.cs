using System.ComponentModel.DataAnnotations;
using System.Reflection;
using NodaTime;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class LimitsTests
{
    [Fact]
    public void Check_HoursAbsurd() => Breaks.One(
        WithStage("sweep", s => s with { Hours = 12_000 }),
        "$.tasks['sweep'].stages[0].hours",
        "'hours' is 12000; it must be from 0 to 10000.");

    [Fact]
    public void Check_HoursNegative() => Breaks.One(
        WithStage("sweep", s => s with { Hours = -0.5m }),
        "$.tasks['sweep'].stages[0].hours",
        "'hours' is -0.5; it must be from 0 to 10000.");

    [Fact]
    public void Check_NameTooLong() => Breaks.One(
        WithPerson("anna", p => p with { Name = new string('a', 201) }),
        "$.people['anna'].name",
        "'name' has 201 characters; it must have 1 to 200.");

    [Fact]
    public void Check_NameEmpty() => Breaks.At(Sound with { Name = "" }, "$.name");

    [Fact]
    public void Check_ListTooLong() => Breaks.One(
        WithTask("sweep", t => t with { Stages = Enumerable.Range(1, 101).Select(NumberedStage).ToValueList() }),
        "$.tasks['sweep'].stages",
        "'stages' has 101 entries; it must have at most 100.");

    [Fact]
    public void Check_NoDaysInWeeklyHours() => Breaks.One(
        WithPlace("bench", p => p with { Quiet = [new WeeklyHours { Days = [], From = default, To = default }] }),
        "$.places['bench'].quiet[0].days",
        "'days' has 0 entries; it must have at least 1.");

    [Fact]
    public void Check_EnumerationWithoutMeaning() => Breaks.One(
        WithTask("sweep", t => t with { Kind = (WorkKind)99 }),
        "$.tasks['sweep'].kind",
        "'kind' has a value without a meaning, 99; choose a known one.");

    [Fact]
    public void Check_DateOutOfRange() => Breaks.One(
        WithUpload("up-1", u => u with { Date = new LocalDate(1989, 12, 31) }),
        "$.uploads['up-1'].date",
        "1989-12-31 is out of range; dates go from 1990-01-01 to 2100-12-31.");

    [Fact]
    public void Check_DateInListAndMomentOutOfRange() => Breaks.At(
        WithSlotRule("fridays", s => s with { Except = [new LocalDate(2101, 1, 1)] }) with
        {
            Accepted = new AcceptedPlan { At = Instant.FromUtc(2101, 1, 1, 0, 0) },
        },
        "$.slotRules['fridays'].except[0]",
        "$.accepted.at");

    [Fact]
    public void Check_DateOfAnotherCalendar() => Breaks.At(
        WithUpload("up-1", u => u with { Date = new LocalDate(1742, 1, 1, CalendarSystem.Coptic) }) with { Zone = "nowhere" },
        "$.uploads['up-1'].date");

    [Fact]
    public void Check_Missing_TellsOnlyLimits() => Breaks.One(
        WithTask("sweep", t => t with { Name = null!, Milestone = Id("unknown") }),
        "$.tasks['sweep'].name",
        "'name' must be given.");

    [Fact]
    public void Check_IdMissing() => Breaks.One(
        WithStage("sweep", s => s with { Id = default }), "$.tasks['sweep'].stages[0].id", "'id' must be given.");

    [Fact]
    public void Check_EntryMissing() => Breaks.One(
        WithTask("sweep", t => t with { Stages = [null!] }), "$.tasks['sweep'].stages[0]", "'entry' must be given.");

    private static Stage NumberedStage(int number) => SampleTasks.Attended(1) with { Id = Id($"{number}") };

    [Fact]
    public void Model_DeclaresOnlyLimitsWithWords()
    {
        HashSet<Type> known =
        [
            typeof(RangeAttribute), typeof(StringLengthAttribute), typeof(MinLengthAttribute), typeof(MaxLengthAttribute),
        ];
        var declared = typeof(Workshop).Assembly.GetExportedTypes()
            .SelectMany(type => type.GetProperties())
            .SelectMany(property => property.GetCustomAttributes<ValidationAttribute>())
            .Select(attribute => attribute.GetType())
            .ToHashSet();

        Assert.Subset(known, declared);
    }
}
