using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

public class PublishingRulesTests
{
    private const string Place = "$.slotRules['fridays'].rule";

    [Theory]
    [InlineData("FREQ=DAILY")]
    [InlineData("FREQ=MONTHLY;BYDAY=-1FR")]
    [InlineData("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29")]
    [InlineData("FREQ=DAILY;BYMONTH=2;BYMONTHDAY=29")]
    [InlineData("FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,FR;WKST=SU")]
    [InlineData("FREQ=WEEKLY;COUNT=3")]
    [InlineData("FREQ=WEEKLY;UNTIL=20261231")]
    [InlineData("FREQ=MONTHLY;BYDAY=FR;BYSETPOS=2")]
    public void Check_SlotRule(string rule) => Assert.Empty(WorkshopRules.Check(WithRule(rule)));

    [Theory]
    [InlineData("weekly", "'weekly' is not a part of the form NAME=VALUE")]
    [InlineData("BYDAY=FR", "it must say FREQ")]
    [InlineData("FREQ=SOMETIMES", "'FREQ=SOMETIMES' is not understood")]
    [InlineData("FREQ=WEEKLY;BYDAY=XX", "'BYDAY=XX' is not understood")]
    [InlineData("FREQ=WEEKLY;FREQ=DAILY", "a part is written twice")]
    [InlineData("FREQ=WEEKLY;BYHOUR=9", "'BYHOUR' is not for slots; the time of day is in 'at'")]
    [InlineData("FREQ=HOURLY", "a slot comes at most daily; use DAILY, WEEKLY, MONTHLY or YEARLY")]
    [InlineData("FREQ=WEEKLY;BYMONTHDAY=3", "a weekly rule can't have BYMONTHDAY")]
    [InlineData("FREQ=WEEKLY;BYDAY=1FR", "numbered days belong to monthly and yearly rules")]
    [InlineData("FREQ=WEEKLY;UNTIL=soon", "UNTIL must be a date like 20271231")]
    [InlineData("FREQ=WEEKLY;INTERVAL=99999999999", "'INTERVAL=99999999999' is not understood")]
    [InlineData("FREQ=WEEKLY;COUNT=3;UNTIL=20261231", "its parts can't stand together; COUNT and UNTIL exclude each other")]
    public void Check_SlotRuleNotUnderstood(string rule, string problem) => Breaks.One(
        WithRule(rule), Place,
        $"'{rule}' is not a recurrence rule: {problem}. Write one like FREQ=WEEKLY;BYDAY=FR (RFC 5545).");

    [Theory]
    [InlineData("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("FREQ=MONTHLY;BYDAY=6FR")]
    [InlineData("FREQ=WEEKLY;UNTIL=20200101")]
    [InlineData("FREQ=YEARLY;INTERVAL=2000000000;BYMONTH=1;BYMONTHDAY=1")]
    public void Check_SlotRuleNeverComes(string rule) => Breaks.One(
        WithRule(rule), Place,
        $"'{rule}' never comes from 2026-01-02 on; name days that exist and are not all left out.");

    [Fact]
    public void Check_SlotRuleAllLeftOut() => Breaks.At(
        WithSlotRule("fridays", s => s with { Rule = "FREQ=WEEKLY;COUNT=2", Except = [Day(1, 2), Day(1, 9)] }), Place);

    [Fact]
    public void Check_SlotRuleOfUnknownSeries() => Breaks.One(
        WithSlotRule("fridays", s => s with { Series = [Id("buggy"), Id("clok")] }),
        "$.slotRules['fridays'].series[1]",
        "There is no series 'clok'; the nearest is 'clock'.");

    private static Workshop WithRule(string rule) => WithSlotRule("fridays", s => s with { Rule = rule });
}
