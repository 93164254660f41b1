using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Globalization;
using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>
/// Holds the limits that the model's members declare (ranges, lengths, what must be given) over the whole workshop,
/// and what holds for every value wherever it stands: dates in range, enumerations with a meaning, ids not empty.
/// </summary>
internal sealed class Limits
{
    private static readonly LocalDate Earliest = new(1990, 1, 1);

    private readonly ReasonList reasons;
    private bool isWhole = true;

    private Limits(ReasonList reasons) => this.reasons = reasons;

    /// <summary>The last day a workshop can speak of.</summary>
    public static LocalDate Latest { get; } = new(2100, 12, 31);

    /// <summary>Notes every broken limit; false where something is missing, so that no other rule can look.</summary>
    public static bool Check(Workshop workshop, ReasonList reasons)
    {
        var limits = new Limits(reasons);
        limits.CheckMembers(workshop, Spot.Root);
        return limits.isWhole;
    }

    private void CheckMembers(object record, Spot at)
    {
        foreach (var member in Members.Of(record.GetType()))
        {
            var value = member.Property.GetValue(record);
            if (value is not null)
            {
                CheckDeclared(member, value, at);
            }

            if (!IsPlain(value) && !(value is null && member.MayBeAbsent))
            {
                CheckValue(value, member.Name, at.Member(member.Name));
            }
        }
    }

    private void CheckDeclared(Member member, object value, Spot at)
    {
        foreach (var limit in member.Limits.AsSpan())
        {
            if (!Keeps(value, limit))
            {
                reasons.Add(at.Member(member.Name), LimitWords.Say(member.Name, value, limit));
            }
        }
    }

    // A range declared with whole numbers would round a decimal before it compares.
    private static bool Keeps(object value, ValidationAttribute limit) => (value, limit) switch
    {
        (decimal number, RangeAttribute range) => number >= Decimal(range.Minimum) && number <= Decimal(range.Maximum),
        _ => limit.IsValid(value),
    };

    private static decimal Decimal(object bound) => Convert.ToDecimal(bound, CultureInfo.InvariantCulture);

    private void CheckValue(object? value, string name, Spot at)
    {
        switch (value)
        {
            case null or Id { IsEmpty: true }:
                isWhole = false;
                reasons.Add(at, $"'{name}' must be given.");
                break;
            case Enum one when !Enum.IsDefined(one.GetType(), one):
                reasons.Add(at, $"'{name}' has a value without a meaning, {one:D}; choose a known one.");
                break;
            case LocalDate or LocalDateTime or Instant:
                CheckDate(value, at);
                break;
            case IEnumerable list and not string:
                CheckEntries(list, at);
                break;
            case not (ValueType or string):
                CheckMembers(value, at);
                break;
        }
    }

    private void CheckEntries(IEnumerable list, Spot at)
    {
        var position = 0;
        foreach (var entry in list)
        {
            var spot = entry is IThing thing && IsKeyed(list) ? at.Thing(thing.Id, "") : at.Item(position);
            CheckValue(entry, "entry", spot);
            position++;
        }
    }

    private void CheckDate(object value, Spot at)
    {
        var date = value switch
        {
            LocalDate day => day,
            LocalDateTime moment => moment.Date,
            _ => ((Instant)value).InUtc().Date,
        };
        if (date.Calendar != CalendarSystem.Iso)
        {
            isWhole = false;
            reasons.Add(at, $"This date is of the {date.Calendar} calendar; dates are of the ISO calendar.");
        }
        else if (date < Earliest || date > Latest)
        {
            var range = $"from {LimitWords.Day(Earliest)} to {LimitWords.Day(Latest)}";
            reasons.Add(at, $"{LimitWords.Day(date)} is out of range; dates go {range}.");
        }
    }

    private static bool IsPlain(object? value) => value is string or bool or int or decimal or LocalTime;

    private static bool IsKeyed(IEnumerable list) =>
        list.GetType() is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Keyed<>);
}
