using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>One member of a record: its name in the file, its shape, and how to get and set it.</summary>
internal abstract class MemberShape(PropertyInfo property, Shape shape)
{
    /// <summary>The name in the file.</summary>
    public string Name { get; } = JsonNamingPolicy.CamelCase.ConvertName(property.Name);

    /// <summary>The bytes of the name, as they stand in most files.</summary>
    public byte[] NameBytes { get; } = Encoding.UTF8.GetBytes(JsonNamingPolicy.CamelCase.ConvertName(property.Name));

    /// <summary>How its values look.</summary>
    public Shape Shape => shape;

    /// <summary>Whether it must be present.</summary>
    public bool IsRequired { get; } = property.IsDefined(typeof(RequiredMemberAttribute));

    /// <summary>Its name in the documentation file.</summary>
    public string DocumentationName { get; } = $"P:{XmlDocumentation.NameOf(property.DeclaringType!)}.{property.Name}";

    /// <summary>The value; null where absent.</summary>
    public abstract object? Get(object owner);

    /// <summary>Sets the value while the owner is being built.</summary>
    public abstract void Set(object owner, object? value);

    /// <summary>The member of a property.</summary>
    public static MemberShape Of(PropertyInfo property) =>
        (MemberShape)Activator.CreateInstance(
            typeof(MemberShape<,>).MakeGenericType(property.DeclaringType!, property.PropertyType),
            property,
            ShapeFactory.Of(property))!;
}

/// <summary>A member with compiled access.</summary>
internal sealed class MemberShape<TOwner, TValue>(PropertyInfo property, Shape shape) : MemberShape(property, shape)
    where TOwner : class
{
    private readonly Func<TOwner, TValue> get = property.GetMethod!.CreateDelegate<Func<TOwner, TValue>>();
    private readonly Action<TOwner, TValue> set = property.SetMethod!.CreateDelegate<Action<TOwner, TValue>>();

    public override object? Get(object owner) => get((TOwner)owner);

    public override void Set(object owner, object? value) => set((TOwner)owner, (TValue)value!);
}
