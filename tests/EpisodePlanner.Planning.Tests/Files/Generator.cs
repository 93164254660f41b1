using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>
/// Makes workshops in which every member of every record may be filled, from a seed. It keeps the limits that the model
/// declares; references lead anywhere, so that only the form of a file can be tested with them.
/// </summary>
internal sealed class Generator(int seed)
{
    private const string Letters = "abcXYZ09 éß漢🛠\"\\/<>&'+\u2028\uFFFD";

    private readonly Random random = new(seed);
    private int nextId;

    /// <summary>Whether optional members are always there.</summary>
    public bool FillsAll { get; init; }

    public T Make<T>() => (T)Make(typeof(T));

    private object Make(Type type)
    {
        var made = RuntimeHelpers.GetUninitializedObject(type).GetType().GetConstructor([])!.Invoke([]);
        foreach (var property in type.GetProperties().Where(property => property.CanWrite))
        {
            if (property.IsDefined(typeof(RequiredMemberAttribute)) || property.Name == "Id" || FillsAll || random.Next(3) > 0)
            {
                property.SetValue(made, Value(property, property.PropertyType));
            }
        }

        return made;
    }

    private object Value(PropertyInfo property, Type type)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        return type switch
        {
            _ when type == typeof(string) => Text(property),
            _ when type == typeof(int) => Whole(property),
            _ when type == typeof(decimal) => Decimal(property),
            _ when type == typeof(bool) => FillsAll ? property.Name != "Payoff" : random.Next(2) == 0,
            _ when type == typeof(Id) => new Id($"{"aBz09"[random.Next(5)]}-{(property.Name == "Id" ? nextId++ : random.Next(100))}"),
            _ when type == typeof(LocalDate) => Date(),
            _ when type == typeof(LocalTime) => Time(),
            _ when type == typeof(LocalDateTime) => Date().At(Time()),
            _ when type == typeof(Instant) => Moment(),
            _ when type.IsEnum => Name(type),
            _ when type.IsGenericType => Many(property, type),
            _ => Make(type),
        };
    }

    private object Many(PropertyInfo property, Type type)
    {
        var inner = type.GetGenericArguments()[0];
        var items = Array.CreateInstance(inner, FillsAll ? 2 : random.Next(property.IsDefined(typeof(MinLengthAttribute)) ? 1 : 0, 4));
        for (var i = 0; i < items.Length; i++)
        {
            items.SetValue(Value(property, inner), i);
        }

        if (inner.IsGenericType)
        {
            items = Some(items, inner);
        }

        var (maker, method) = type.GetGenericTypeDefinition() == typeof(ValueList<>)
            ? (typeof(ValueList), nameof(ValueList.ToValueList))
            : (typeof(Keyed), nameof(Keyed.ToKeyed));
        return maker.GetMethod(method)!.MakeGenericMethod(inner).Invoke(null, [items])!;
    }

    private static Array Some(Array lists, Type inner)
    {
        var some = lists.Cast<IReadOnlyCollection<Id>>().Where(list => list.Count > 0).ToArray();
        var items = Array.CreateInstance(inner, some.Length);
        Array.Copy(some, items, some.Length);
        return items;
    }

    private string Text(PropertyInfo property)
    {
        var limits = property.GetCustomAttribute<StringLengthAttribute>();
        var most = Math.Min(limits?.MaximumLength ?? 20, 20);
        var text = string.Concat(Enumerable.Range(0, random.Next(0, most / 2)).Select(_ => Rune()));
        var isNote = property.IsDefined(typeof(ManyLinesAttribute));
        return (limits?.MinimumLength > 0 ? "x" : "") + text + (isNote ? "\n\t" : "");
    }

    private string Rune()
    {
        var runes = Letters.EnumerateRunes().ToList();
        return runes[random.Next(runes.Count)].ToString();
    }

    private int Whole(PropertyInfo property)
    {
        var range = property.GetCustomAttribute<RangeAttribute>()!;
        var (least, most) = ((int)range.Minimum, (int)range.Maximum);
        return random.Next(6) switch { 0 => least, 1 => most, _ => random.Next(Math.Max(least, FillsAll ? 1 : least), most) };
    }

    private decimal Decimal(PropertyInfo property)
    {
        var range = property.GetCustomAttribute<RangeAttribute>()!;
        var least = Convert.ToDecimal(range.Minimum, CultureInfo.InvariantCulture);
        var most = Convert.ToDecimal(range.Maximum, CultureInfo.InvariantCulture);
        var share = random.Next(1, 1_000) / 1_000m;
        return random.Next(6) switch { 0 => most, 1 => least + ((most - least) * 0.50m), _ => least + ((most - least) * share) };
    }

    private LocalDate Date() => new LocalDate(2027, 1, 1).PlusDays(random.Next(-2_000, 2_000));

    private LocalTime Time() => LocalTime.FromSecondsSinceMidnight(random.Next(86_400) / (random.Next(3) == 0 ? 1 : 60) * 60 % 86_400);

    private Instant Moment() =>
        Instant.FromUnixTimeMilliseconds(1_800_000_000_000 + (random.Next() * 1_000L)).PlusNanoseconds(random.Next(3) * 120_000_000L);

    private object Name(Type type)
    {
        var values = Enum.GetValues(type).Cast<object>().Where(value => value is not IsoDayOfWeek.None).ToList();
        return values[FillsAll ? values.Count - 1 : random.Next(values.Count)];
    }
}
