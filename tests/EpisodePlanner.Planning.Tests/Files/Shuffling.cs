using System.Collections;
using System.Reflection;

namespace EpisodePlanner.Planning.Tests.Files;

/// <summary>Shuffles every list of a thing that is marked as having no order, down to inner lists.</summary>
internal sealed class Shuffling(int seed)
{
    private readonly Random random = new(seed);

    public T Shuffle<T>(T thing)
        where T : notnull => (T)Shuffle(thing, false);

    private object Shuffle(object value, bool anyOrder)
    {
        var type = value.GetType();
        if (type.IsGenericType && type.GetInterfaces().Contains(typeof(IEnumerable)))
        {
            return ShuffleItems((IEnumerable)value, type, anyOrder);
        }

        return type.Namespace == typeof(Workshop).Namespace && type.IsClass ? ShuffleMembers(value, type) : value;
    }

    private object ShuffleMembers(object value, Type type)
    {
        var copy = type.GetConstructor([])!.Invoke([]);
        foreach (var property in type.GetProperties().Where(property => property.CanWrite))
        {
            var part = property.GetValue(value);
            property.SetValue(copy, part is null ? null : Shuffle(part, property.IsDefined(typeof(AnyOrderAttribute))));
        }

        return copy;
    }

    private object ShuffleItems(IEnumerable value, Type type, bool anyOrder)
    {
        var items = value.Cast<object>().Select(item => Shuffle(item, anyOrder)).ToArray();
        if (anyOrder)
        {
            random.Shuffle(items);
        }

        var inner = type.GetGenericArguments()[0];
        var array = Array.CreateInstance(inner, items.Length);
        Array.Copy(items, array, items.Length);
        var (maker, method) = type.GetGenericTypeDefinition() == typeof(ValueList<>)
            ? (typeof(ValueList), nameof(ValueList.ToValueList))
            : (typeof(Keyed), nameof(Keyed.ToKeyed));
        return maker.GetMethod(method)!.MakeGenericMethod(inner).Invoke(null, [array])!;
    }
}
