using System.Collections.Concurrent;
using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Reflection;
using EpisodePlanner.Planning.Files.Text;
using NodaTime;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Derives shapes from the model: types give the form, annotations the limits.</summary>
internal static class ShapeFactory
{
    private const int LongestUnlimitedText = 500;

    private static readonly ConcurrentDictionary<Type, Shape> Records = new();

    private static readonly Dictionary<Type, Shape> Simple = new Shape[]
    {
        new BooleanShape(),
        new TextShape<Id>(Forms.Ids),
        new TextShape<LocalDate>(Forms.Dates),
        new TextShape<LocalTime>(Forms.Times),
        new TextShape<LocalDateTime>(Forms.DateTimes),
        new TextShape<Instant>(Forms.Instants),
    }.ToDictionary(shape => shape.Type);

    /// <summary>The shape of a record.</summary>
    public static RecordShape<T> Record<T>()
        where T : class => (RecordShape<T>)Record(typeof(T));

    /// <summary>The shape of a property's values, with the limits that its annotations give.</summary>
    public static Shape Of(PropertyInfo property)
    {
        var type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return type switch
        {
            _ when type == typeof(string) => Text(property),
            _ when type == typeof(int) || type == typeof(long) || type == typeof(decimal) => Number(property, type),
            _ when IsGeneric(type, typeof(ValueList<>)) => List(property, type),
            _ => Of(type),
        };
    }

    private static Shape Of(Type type) => type switch
    {
        _ when Simple.TryGetValue(type, out var simple) => simple,
        _ when type == typeof(string) => new StringShape(0, LongestUnlimitedText, manyLines: false),
        _ when type == typeof(Change) => ChangeShape.Instance,
        _ when type.IsEnum => Make(typeof(EnumShape<>), type),
        _ when IsGeneric(type, typeof(Keyed<>)) => Make(typeof(KeyedShape<>), Inner(type), Record(Inner(type))),
        _ => Record(type),
    };

    /// <summary>The shape of a record.</summary>
    public static Shape Record(Type type) => Records.GetOrAdd(type, made => Make(typeof(RecordShape<>), made));

    private static StringShape Text(PropertyInfo property)
    {
        var limits = property.GetCustomAttribute<StringLengthAttribute>();
        var manyLines = property.IsDefined(typeof(ManyLinesAttribute));
        return new StringShape(limits?.MinimumLength ?? 0, limits?.MaximumLength ?? LongestUnlimitedText, manyLines);
    }

    private static NumberShape Number(PropertyInfo property, Type type)
    {
        var range = property.GetCustomAttribute<RangeAttribute>()
            ?? throw new InvalidOperationException($"{property.DeclaringType}.{property.Name} needs a [Range].");
        return new NumberShape(type, ToDecimal(range.Minimum), ToDecimal(range.Maximum));
    }

    private static Shape List(PropertyInfo property, Type type)
    {
        var least = property.GetCustomAttribute<MinLengthAttribute>()?.Length ?? 0;
        var most = property.GetCustomAttribute<MaxLengthAttribute>()?.Length ?? int.MaxValue;
        return List(type, least, most, property.IsDefined(typeof(AnyOrderAttribute)));
    }

    private static Shape List(Type type, int least, int most, bool anyOrder)
    {
        var inner = Inner(type);
        var element = IsGeneric(inner, typeof(ValueList<>)) ? List(inner, 1, most, anyOrder) : Of(inner);
        return Make(typeof(ListShape<>), inner, element, least, most, anyOrder);
    }

    private static Shape Make(Type shape, Type of, params object[] arguments) =>
        (Shape)Activator.CreateInstance(shape.MakeGenericType(of), arguments)!;

    private static bool IsGeneric(Type type, Type definition) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == definition;

    private static Type Inner(Type type) => type.GetGenericArguments()[0];

    private static decimal ToDecimal(object bound) => Convert.ToDecimal(bound, CultureInfo.InvariantCulture);
}
