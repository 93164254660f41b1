using System.Collections;
using System.ComponentModel.DataAnnotations;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning;

/// <summary>Says in a sentence which declared limit a value breaks.</summary>
internal static class LimitWords
{
    /// <summary>What is wrong with the value and what would be right.</summary>
    public static string Say(string name, object value, ValidationAttribute limit) => limit switch
    {
        RangeAttribute range => $"'{name}' is {Number(value)}; it must be from {range.Minimum} to {range.Maximum}.",
        StringLengthAttribute length =>
            $"'{name}' has {Count(value)} characters; it must have {length.MinimumLength} to {length.MaximumLength}.",
        MinLengthAttribute least => $"'{name}' has {Count(value)} entries; it must have at least {least.Length}.",
        MaxLengthAttribute most => $"'{name}' has {Count(value)} entries; it must have at most {most.Length}.",
        _ => limit.FormatErrorMessage($"'{name}'"),
    };

    /// <summary>A number as the file would have it.</summary>
    public static string Number(object value) => value is decimal number ? $"{number:0.######}" : $"{value}";

    /// <summary>A day as the file would have it.</summary>
    public static string Day(LocalDate day) => LocalDatePattern.Iso.Format(day);

    private static int Count(object value) =>
        value is string text ? text.Length : ((IEnumerable)value).Cast<object>().Count();
}
