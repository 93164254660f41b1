using System.Collections.Concurrent;
using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.Json;

namespace EpisodePlanner.Planning;

/// <summary>One member of a record, with the limits that its declaration carries.</summary>
internal sealed record Member(PropertyInfo Property, bool MayBeAbsent, ValueList<ValidationAttribute> Limits)
{
    /// <summary>Its name in the workshop file.</summary>
    public string Name { get; } = JsonNamingPolicy.CamelCase.ConvertName(Property.Name);
}

/// <summary>The members of the model's records, read from their declarations once.</summary>
internal static class Members
{
    private static readonly ConcurrentDictionary<Type, ValueList<Member>> Known = new();

    /// <summary>The members of a record that can be set, in the order of their declaration.</summary>
    public static ValueList<Member> Of(Type type) => Known.GetOrAdd(type, Read);

    private static ValueList<Member> Read(Type type)
    {
        var nullability = new NullabilityInfoContext();
        return type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.CanWrite)
            .Select(property => new Member(
                property,
                nullability.Create(property).ReadState is NullabilityState.Nullable,
                property.GetCustomAttributes<ValidationAttribute>().ToValueList()))
            .ToValueList();
    }
}
