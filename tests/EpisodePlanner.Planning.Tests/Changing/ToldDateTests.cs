using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;
using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class ToldDateTests
{
    private static readonly ToldDate First = Sound.ToldDates.Single();
    private static readonly ToldDate Second = First with { Id = Id("told-2"), Date = Day(2, 13) };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Apply_RemovedOrAltered_IsRefused(bool removed)
    {
        var change = new ToldDateChange(First.Id, removed ? null : First with { Date = Day(2, 13) });

        var refused = Assert.IsType<Refused>(Changes.Apply(Sound, change));

        var says = "A told date is kept for ever, as it was said; leave it, and add the new date beside it.";
        Assert.Equal([new Reason("$.toldDates['told-1']", says)], refused.Reasons);
    }

    [Fact]
    public void Apply_UndoOfItsAddition_TakesItBack()
    {
        var applied = Apply(Sound, new ToldDateChange(Second.Id, Second));
        var undone = Apply(applied.Workshop, applied.Inverse);

        Assert.Equal(Sound, undone.Workshop);
        Assert.Equal(applied.Workshop, Apply(undone.Workshop, undone.Inverse).Workshop);
    }

    [Fact]
    public void Apply_UndoOfAnotherToldDate_IsRefused()
    {
        var undo = Apply(Sound, new ToldDateChange(Second.Id, Second)).Inverse;
        var other = Sound with { ToldDates = [First, Second with { To = "a sponsor" }] };

        Assert.IsType<Refused>(Changes.Apply(Sound, undo));
        Assert.IsType<Refused>(Changes.Apply(other, undo));
    }

    [Fact]
    public void ToldDateTakenBack_ComesBackFromItsStoredText()
    {
        var options = new JsonSerializerOptions { Converters = { new IdConverter(), new DayConverter() } };
        var undo = Apply(Sound, new ToldDateChange(Second.Id, Second)).Inverse;

        var text = JsonSerializer.Serialize(undo, options);

        Assert.StartsWith("{\"kind\":\"toldDateTakenBack\"", text, StringComparison.Ordinal);
        Assert.Equal(undo, JsonSerializer.Deserialize<Change>(text, options));
    }

    private static Applied Apply(Workshop workshop, Change change) =>
        Assert.IsType<Applied>(Changes.Apply(workshop, change));

    private sealed class IdConverter : JsonConverter<Id>
    {
        public override Id Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            new(reader.GetString()!);

        public override void Write(Utf8JsonWriter writer, Id value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.ToString());
    }

    private sealed class DayConverter : JsonConverter<LocalDate>
    {
        public override LocalDate Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            LocalDatePattern.Iso.Parse(reader.GetString()!).Value;

        public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options) =>
            writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
    }
}
